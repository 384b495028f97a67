"""The offline site: a start page, and for each guide a sheet that opens from a folder or a stick."""

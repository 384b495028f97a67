"""How hard each part is to get out: steps, tools, fasteners, materials, and the points that the EU rules give."""

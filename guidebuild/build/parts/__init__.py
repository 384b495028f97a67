"""A content folder checked and built in parts, on as many machines as there are, and the parts joined again."""

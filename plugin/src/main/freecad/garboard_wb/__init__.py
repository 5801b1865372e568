"""Garboard inside FreeCAD. It asks the core, a Java program, and shows what comes back; it does no naval architecture."""

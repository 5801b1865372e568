# Runs in FreeCAD with a screen. Methods do not see this file's names, so they import for themselves.
import FreeCADGui


class GarboardWorkbench(FreeCADGui.Workbench):
    """Table of offsets to drawings, in a document."""

    def __init__(self):
        from garboard_wb import paths
        self.__class__.Icon = paths.icon("garboard")
        self.__class__.MenuText = "Garboard"
        self.__class__.ToolTip = "Where a sonar transducer goes, how it goes in, what to cut"

    def Initialize(self):
        from garboard_wb import commands
        self.appendToolbar("Garboard", commands.NAMES)
        self.appendMenu("Garboard", commands.NAMES)

    def GetClassName(self):
        return "Gui::PythonWorkbench"


def _preferences():
    from garboard_wb import paths
    FreeCADGui.addIconPath(paths.ICONS)
    FreeCADGui.addPreferencePage(paths.ui("preferences"), "Garboard")


_preferences()
FreeCADGui.addWorkbench(GarboardWorkbench())

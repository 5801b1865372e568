"""The commands of the workbench: each opens its panel."""
import importlib

import FreeCAD
import FreeCADGui

from garboard_wb import paths


class Command:
    """Opens one panel."""

    def __init__(self, panel, icon, text, tip, needs_boat=True, module="panels"):
        self.panel, self.icon, self.text, self.tip, self.needs_boat, self.module = panel, icon, text, tip, needs_boat, module

    def GetResources(self):
        return {"Pixmap": paths.icon(self.icon), "MenuText": self.text, "ToolTip": self.tip}

    def IsActive(self):
        return not FreeCADGui.Control.activeDialog() and (not self.needs_boat or FreeCAD.ActiveDocument is not None)

    def Activated(self):
        FreeCADGui.Control.showDialog(getattr(importlib.import_module("garboard_wb." + self.module), self.panel)())


COMMANDS = {
    "Garboard_Open": Command("OpenPanel", "open", "Open a job or a table", "A job (job.xml) or a table of offsets, with its hull", needs_boat=False),
    "Garboard_Lines": Command("LinesPanel", "lines", "Show lines", "Sections, buttocks and waterlines"),
    "Garboard_Attitude": Command("AttitudePanel", "attitude", "How she runs", "Water, stagnation lines and streamlines at every speed"),
    "Garboard_Sites": Command("SitesPanel", "sites", "Find sites", "Where the transducer may go, with every check; click a place to see its checks"),
    "Garboard_Place": Command("PartPanel", "place", "Place a pocket or a block", "A keel pocket, a flush through-hull or a fairing block", module="fitting_panels"),
    "Garboard_Cut": Command("CutPanel", "cut", "Cut the hull", "The skin with what is cut in it for the placed parts, and as STEP or STL", module="fitting_panels"),
    "Garboard_Sheets": Command("SheetsPanel", "sheets", "Make sheets", "The whole set of drawings, and open them", module="fitting_panels"),
    "Garboard_Refresh": Command("RefreshPanel", "refresh", "Read the files again",
                                "Hull, pockets and blocks worked out again from job and table as they stand now"),
}
NAMES = list(COMMANDS)

for name, command in COMMANDS.items():
    FreeCADGui.addCommand(name, command)

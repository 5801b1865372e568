"""Where the files of this workbench lie, from this file's own place."""
import os

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
ICONS = os.path.join(ROOT, "Resources", "icons")


def icon(name):
    return os.path.join(ICONS, name + ".svg")


def ui(name):
    return os.path.join(ROOT, "Resources", "ui", name + ".ui")


def home():
    """The folder with lib/ and bin/java-options: this workbench's own, or the built folder that GARBOARD_HOME names."""
    return os.environ.get("GARBOARD_HOME") or ROOT

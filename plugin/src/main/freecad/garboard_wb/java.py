"""Finds a Java runtime that is new enough, and the command that starts the core's session with it."""
import glob
import os
import re
import shutil
import subprocess

import FreeCAD

from garboard_wb import paths

LEAST = 17
PREFERENCES = "User parameter:BaseApp/Preferences/Mod/Garboard"
REMEDY = ("Install a Java runtime, version 17 or newer (Debian, Ubuntu: apt install openjdk-17-jre-headless; others: the "
          "OpenJDK package of your system), or name its program java under Edit, Preferences, Garboard.")

SANDBOX = (" This FreeCAD runs as a Flatpak and does not see the system's programs: unpack a Java runtime into your home folder and "
           "name its program java in the preferences.")


class NoCore(Exception):
    """The core cannot be started; the words say what is missing and what helps."""


def runtime():
    """The program java: by preference, else by JAVA_HOME, else on the PATH."""
    chosen = FreeCAD.ParamGet(PREFERENCES).GetString("JavaPath", "")
    home = os.environ.get("JAVA_HOME", "")
    if chosen:
        program, origin = chosen, "the preferences of Garboard name %s" % chosen
    elif home:
        program, origin = os.path.join(home, "bin", "java"), "JAVA_HOME is %s" % home
    else:
        program, origin = shutil.which("java") or "", "no java was found on the PATH, and JAVA_HOME is not set"
    program = shutil.which(program) or ""
    if not program:
        raise NoCore("Java was not found: %s. %s%s" % (origin if not (chosen or home) else origin + ", but no program is there", REMEDY,
                                                       SANDBOX if "FLATPAK_ID" in os.environ else ""))
    version = _version(program)
    major = re.match(r"(?:1\.)?(\d+)", version)
    if not major:
        raise NoCore("%s does not say its version as a Java runtime does. %s" % (program, REMEDY))
    if int(major.group(1)) < LEAST:
        raise NoCore("%s is Java %s; Garboard needs %d or newer. %s" % (program, version, LEAST, REMEDY))
    return program


def _version(program):
    """From the file that a runtime has beside its bin; else it is asked, which takes longer."""
    release = os.path.join(os.path.dirname(os.path.dirname(os.path.realpath(program))), "release")
    try:
        with open(release, encoding="utf-8", errors="replace") as lines:
            found = re.search(r'^JAVA_VERSION="([^"]*)"', lines.read(), re.M)
        if found:
            return found.group(1)
    except OSError:
        pass
    try:
        said = subprocess.run([program, "-version"], stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                              env=environment(), timeout=20, check=False).stdout.decode("utf-8", "replace")
    except (OSError, subprocess.TimeoutExpired):
        return ""
    found = re.search(r'version "([^"]*)"', said)
    return found.group(1) if found else ""


def session():
    """The words that start a session of the core."""
    home = paths.home()
    lib = os.path.join(home, "lib")
    if not glob.glob(os.path.join(lib, "garboard-*.jar")):
        raise NoCore("The core of Garboard is not in %s. Unpack the whole of garboard-freecad-<version>.zip, "
                     "or let GARBOARD_HOME name a built folder." % lib)
    options = os.path.join(home, "bin", "java-options")
    heap = os.environ.get("GARBOARD_HEAP", "1g")
    return [runtime(), "@" + options, "-Xmx" + heap, "-cp", os.path.join(lib, "*"), "org.garboard.cli.Garboard", "session"]


def environment():
    """This process's variables, without those by which a bundled FreeCAD points programs at its own libraries."""
    variables = dict(os.environ)
    if "APPIMAGE" in variables or "SNAP" in variables:
        for name in ("LD_LIBRARY_PATH", "LD_PRELOAD", "PYTHONHOME", "PYTHONPATH", "QT_PLUGIN_PATH", "GCONV_PATH"):
            variables.pop(name, None)
    return variables

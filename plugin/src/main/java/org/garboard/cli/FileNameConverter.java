package org.garboard.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A file or folder named on the command line. Where the shell's locale is plain ASCII, other letters cannot be named. */
final class FileNameConverter implements ITypeConverter<Path> {

    @Override
    public Path convert(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new TypeConversionException("\"" + text + "\" cannot be the name of a file here ("
                + e.getReason() + "); in a shell whose locale is not UTF-8 set LC_ALL=C.UTF-8");
        }
    }
}

package org.garboard.drawing.sheets;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.dxf.SheetDxf;
import org.garboard.drawing.svg.SheetSvg;

/** The file formats of a sheet. */
public enum SheetFormat {
    DXF(".dxf") {
        @Override
        void write(Sheet sheet, OutputStream out) throws IOException {
            SheetDxf.write(sheet, out);
        }
    },
    SVG(".svg") {
        @Override
        void write(Sheet sheet, OutputStream out) throws IOException {
            SheetSvg.write(sheet, out);
        }
    };

    private final String ending;

    SheetFormat(String ending) {
        this.ending = ending;
    }

    /** Of the file's name, with its point. */
    public String ending() {
        return ending;
    }

    abstract void write(Sheet sheet, OutputStream out) throws IOException;

    /** The sheet as a file; the same sheet gives the same bytes. */
    public NamedDrawing drawing(String name, Sheet sheet) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            write(sheet, out);
        } catch (IOException e) {
            throw new UncheckedIOException("a drawing could not be written to memory", e);
        }
        return new NamedDrawing(name + ending, out.toByteArray());
    }
}

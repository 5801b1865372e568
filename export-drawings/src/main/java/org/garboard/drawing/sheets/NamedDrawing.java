package org.garboard.drawing.sheets;

import java.io.IOException;
import java.io.OutputStream;

/** A finished drawing file: its name and its bytes. */
public final class NamedDrawing {
    private final String fileName;
    private final byte[] content;

    NamedDrawing(String fileName, byte[] content) {
        this.fileName = fileName;
        this.content = content.clone();
    }

    /** Name without folder. */
    public String fileName() {
        return fileName;
    }

    /** A copy of the whole file. */
    public byte[] content() {
        return content.clone();
    }

    public void writeTo(OutputStream out) throws IOException {
        out.write(content);
    }
}

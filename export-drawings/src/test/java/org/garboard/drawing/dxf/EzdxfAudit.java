package org.garboard.drawing.dxf;

import org.garboard.reader.OutsideReader;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Reads a DXF with ezdxf and audits it: no errors, nothing to mend. */
public final class EzdxfAudit {

    private static final String SCRIPT = """
            import sys, ezdxf, logging
            logging.disable(logging.CRITICAL)
            audit = ezdxf.readfile(sys.argv[1]).audit()
            for entry in list(audit.errors) + list(audit.fixes):
                print(entry.message)
            print('%d errors, %d fixes' % (len(audit.errors), len(audit.fixes)))
            """;

    private EzdxfAudit() {
    }

    public static void assertClean(Path file) throws IOException {
        OutsideReader.Answer answer = OutsideReader.EZDXF.run(List.of("-c", SCRIPT, file.toString()));
        assertEquals("0 errors, 0 fixes", answer.output().strip());
        assertEquals(0, answer.exit());
    }
}

package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.garboard.reader.OutsideReader;

/** What drawing programs that are not ours make of DXF files. All they write goes into a folder of the test's own. */
final class OtherPrograms {
    private final Path folder;

    OtherPrograms(Path folder) {
        this.folder = folder;
    }

    /** Of each file by name and each layer, the length that FreeCAD's importer makes of it [mm]. */
    Map<String, Map<String, Double>> lengths(List<Path> drawings) throws IOException {
        OutsideReader.CAD.require();
        Path answers = folder.resolve("lengths.txt");
        OutsideReader.CAD.run(List.of(script("lengths_of_dxf.py").toString()), Map.of("FREECAD_USER_HOME", home(),
            "GARBOARD_ANSWERS", answers.toString(),
            "GARBOARD_DRAWINGS", drawings.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator))));
        List<String> lines = Files.readAllLines(answers, StandardCharsets.UTF_8);
        assertEquals("done", lines.get(lines.size() - 1));
        Map<String, Map<String, Double>> lengths = new HashMap<>();
        for (String line : lines.subList(0, lines.size() - 1)) {
            String[] cells = line.split(" ");
            lengths.computeIfAbsent(cells[0], file -> new HashMap<>()).put(cells[1], Double.parseDouble(cells[2]));
        }
        return lengths;
    }

    /** A drawing as LibreCAD puts it on a page, in grey, 150 dots to the inch. */
    BufferedImage picture(Path drawing) throws IOException {
        OutsideReader.LIBRECAD.require();
        OutsideReader.POPPLER.require();
        Path pages = Files.createDirectories(folder.resolve("pages"));
        OutsideReader.LIBRECAD.run(List.of("dxf2pdf", "-a", "-m", "-r", "300", "-t", pages.toString(), drawing.toString()),
            Map.of("QT_QPA_PLATFORM", "offscreen", "XDG_RUNTIME_DIR", home(), "HOME", home()));
        Path page = pages.resolve(drawing.getFileName().toString().replace(".dxf", ".pdf"));
        assertEquals(new OutsideReader.Answer(0, ""), OutsideReader.POPPLER.run(List.of("-r", "150", "-gray", "-png", "-singlefile",
            page.toString(), page.toString())));
        return ImageIO.read(new File(page + ".png"));
    }

    /** Lines of file, layer, "closed" or "open" and length [mm]: outlines and holes as a program for mills reads them. */
    List<String> contours(List<Path> cutFiles) throws IOException {
        OutsideReader.MILL.require();
        List<String> asked = new ArrayList<>(List.of(script("contours_of_dxf.py").toString()));
        cutFiles.forEach(file -> asked.add(file.toString()));
        OutsideReader.Answer answer = OutsideReader.MILL.run(asked, Map.of("QT_QPA_PLATFORM", "offscreen", "XDG_RUNTIME_DIR", home(), "HOME", home()));
        assertEquals(0, answer.exit(), answer.output());
        return answer.output().lines().toList();
    }

    private String home() throws IOException {
        return Files.createDirectories(folder.resolve("home")).toString();
    }

    private Path script(String name) throws IOException {
        Path script = folder.resolve(name);
        try (var in = OtherPrograms.class.getResourceAsStream("/cli/" + name)) {
            return Files.write(script, in.readAllBytes());
        }
    }
}

package org.garboard.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.KeelRows;
import org.garboard.offsets.LengthWords;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OpenEnd;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.Reading;
import org.garboard.offsets.SectionPoint;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.StationRun;
import org.garboard.offsets.StrakeEdges;

/**
 * A take-off in the boat's own frame.
 *
 * @param takeOff as it was measured
 * @param asBlocked what was taken out
 * @param base what z is measured from, in words
 * @param stations in the boat's own frame
 * @param kinds of the lines, from the keel outward
 * @param panels the skin as far as it was measured
 * @param apart by how much the two sides differ most [m]
 * @param keelBelow the keel below the skin, if one was measured
 * @param strakes lifting strakes that were measured
 */
public record LevelledOffsets(TakeOff takeOff, AsBlocked asBlocked, String base, List<Station> stations, List<LineKind> kinds,
                              List<PanelOffsets> panels, double apart, Optional<KeelRows> keelBelow,
                              List<StrakeEdges> strakes) implements HullOffsets {
    private static final Pattern TRANSOM = Pattern.compile("transom", Pattern.CASE_INSENSITIVE);

    public LevelledOffsets {
        stations = List.copyOf(stations);
        kinds = List.copyOf(kinds);
        panels = List.copyOf(panels);
        strakes = List.copyOf(strakes);
    }

    @Override
    public String title() {
        return takeOff.title();
    }

    /** A level and a tape reach no other. */
    @Override
    public SkinSurface surface() {
        return SkinSurface.OUTSIDE_OF_SKIN;
    }

    @Override
    public double leastCount() {
        return takeOff.leastCount();
    }

    @Override
    public Reading reading(SectionPoint point) {
        return Reading.UP_AND_OUT;
    }

    @Override
    public LevelledOffsets part(StationRun run) {
        return new LevelledOffsets(takeOff, asBlocked, base, stations.subList(run.from(), run.to()), kinds,
            panels.stream().map(panel -> new PanelOffsets(panel.lower(), panel.upper(), panel.stations().subList(run.from(), run.to()))).toList(),
            apart, keelBelow, strakes);
    }

    /** Points lie on no common levels. */
    @Override
    public List<Double> levels(LineKind kind) {
        return List.of();
    }

    @Override
    public String origin() {
        return takeOff.datum().name();
    }

    @Override
    public boolean isFromPlaceOfBoat() {
        return true;
    }

    @Override
    public String word() {
        return "take-off";
    }

    @Override
    public String document() {
        return "Take-off";
    }

    @Override
    public String comesFrom() {
        return "points taken off this boat with level and tape";
    }

    @Override
    public String beyond() {
        return "not measured there: it is off";
    }

    @Override
    public Set<OpenEnd> openEnds() {
        return takeOff.openEnds();
    }

    @Override
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        remarks.add("AS BLOCKED WHEN MEASURED: " + asBlocked.words() + ". Both are taken out: angles here are to the skin"
            + " and to the boat's own level (" + base + "). Plumb bob and spirit level serve only after that trim and heel"
            + " are allowed for.");
        LengthWords words = new LengthWords(takeOff.leastCount());
        remarks.add("Port and starboard readings of one mark differ by " + words.say(apart) + " at most"
            + (takeOff.symmetricWithin() > 0 ? " (the take-off allows " + words.say(takeOff.symmetricWithin()) + ")" : "")
            + "; the mean of both sides is drawn.");
        remarks.add(reach());
        return List.copyOf(remarks);
    }

    /** How far she was measured, and whether that fixes her transom. */
    private String reach() {
        String forward = openEnds().contains(OpenEnd.FORWARD) ? "forward of station " + stations.get(0).name() : "";
        String aft = openEnds().contains(OpenEnd.AFTER) ? "aft of station " + stations.get(stations.size() - 1).name() : "";
        String both = forward + (forward.isEmpty() || aft.isEmpty() ? "" : " and ") + aft;
        String measured = both.isEmpty() ? "Measured from end to end." : "Not measured " + both + ": the boat goes on there, and nothing is known of her.";
        boolean isDatum = TRANSOM.matcher(takeOff.datum().name()).find();
        return measured + (isDatum ? " The transom is fixed by the datum alone, " + takeOff.datum().name() + ", x = 0; how it rakes is not."
            : openEnds().contains(OpenEnd.AFTER) ? " Where the transom stands is not fixed." : "");
    }
}

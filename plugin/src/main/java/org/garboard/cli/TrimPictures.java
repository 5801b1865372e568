package org.garboard.cli;

import java.nio.file.Path;
import java.util.List;
import org.garboard.cli.files.JobSource;
import org.garboard.cli.files.OutputRefused;
import org.garboard.craft.BottomFeatures;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.CraftRunning;
import org.garboard.flow.underway.WaterUnderWay;
import org.garboard.hull.Hull;

/** Pictures of how a boat runs. */
final class TrimPictures {
    TrimPictures(JobSource source, Hull hull, BottomFeatures features, String version) {
    }

    List<String> write(Path folder, CraftRunning running, List<AtSpeed> speeds, WaterUnderWay waters) throws OutputRefused {
        return List.of();
    }
}

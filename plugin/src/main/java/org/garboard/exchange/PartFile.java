package org.garboard.exchange;

import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.mount.Mount;
import org.garboard.siting.PlanPoint;

/** Writes what is cut or made at one place, as {@code garboard-part.xsd} describes it. */
public final class PartFile {
    static final String NAMESPACE = "urn:garboard:part";
    static final String VERSION = "1";

    private PartFile() {
    }

    /**
     * What a part is of.
     *
     * @param place that was asked for
     * @param job read from
     * @param table the hull was drawn from
     */
    public record Origin(String programVersion, Mount mount, PlanPoint place, FileHash job, FileHash table) {
    }

    /**
     * A pocket's figures, and of its solids what is taken out of the boat, the body in it, and the skin round it.
     *
     * @param notes what the yard has to know beside them
     */
    public static byte[] pocket(Origin origin, Pocket pocket, List<String> notes) {
        return XmlWriting.bytes(PartMapping.pocket(origin, pocket, notes), NAMESPACE);
    }

    /** @param notes what the yard has to know beside them */
    public static byte[] solids(Origin origin, List<NamedSolid> solids, List<String> notes) {
        return XmlWriting.bytes(PartMapping.solids(origin, solids, notes), NAMESPACE);
    }
}

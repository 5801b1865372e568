package org.garboard.exchange;

import java.util.List;
import java.util.Set;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.part.NamedSolid;
import org.garboard.exchange.xml.part.File;
import org.garboard.exchange.xml.part.Part;
import org.garboard.exchange.xml.part.Solid;
import org.garboard.units.FixedDecimal;

/** Turns what is cut at a place into its bean. */
final class PartMapping {
    private static final double LITRES_PER_M3 = 1000;
    /** Of a pocket's bodies; laminate and formers are written by a run. */
    private static final Set<String> IN_THE_HOST = Set.of("pocket", "body-in-pocket", "hull-skin", "skin-round-pocket");
    /** Of a millimetre: finer than the meshes stray. */
    private static final int PLACES = 5;

    private PartMapping() {
    }

    static Part pocket(PartFile.Origin origin, Pocket pocket, List<String> notes) {
        Part bean = part(origin);
        bean.setPocket(PocketMapping.toBean(pocket));
        pocket.solids().stream().filter(solid -> IN_THE_HOST.contains(solid.name())).forEach(solid -> bean.getSolid().add(solid(solid)));
        bean.getNote().addAll(notes);
        return bean;
    }

    static Part solids(PartFile.Origin origin, List<NamedSolid> solids, List<String> notes) {
        Part bean = part(origin);
        solids.forEach(solid -> bean.getSolid().add(solid(solid)));
        bean.getNote().addAll(notes);
        return bean;
    }

    private static Part part(PartFile.Origin origin) {
        Part bean = new Part();
        bean.setVersion(PartFile.VERSION);
        bean.setProgramVersion(origin.programVersion());
        bean.setMount(origin.mount().word());
        bean.setXM(Decimals.metres(origin.place().x()));
        bean.setYM(Decimals.metres(origin.place().y()));
        bean.setJob(file(origin.job()));
        bean.setTable(file(origin.table()));
        return bean;
    }

    private static File file(FileHash hash) {
        File bean = new File();
        bean.setName(hash.name());
        bean.setSha256(hash.sha256());
        return bean;
    }

    private static Solid solid(NamedSolid named) {
        org.garboard.solid.Solid solid = named.solid();
        Solid bean = new Solid();
        bean.setName(named.name());
        bean.setVolumeLitres(Decimals.fixed(solid.volume() * LITRES_PER_M3, 6));
        for (int i = 0; i < solid.vertices(); i++) {
            bean.getVerticesMm().add(millimetres(solid.x(i), solid.y(i), solid.z(i)));
        }
        for (int i = 0; i < solid.triangles(); i++) {
            bean.getTriangles().add(solid.corner(i, 0) + "," + solid.corner(i, 1) + "," + solid.corner(i, 2));
        }
        return bean;
    }

    private static String millimetres(double x, double y, double z) {
        StringBuilder text = new StringBuilder();
        FixedDecimal.append(text, 1000 * x, PLACES);
        text.append(',');
        FixedDecimal.append(text, 1000 * y, PLACES);
        text.append(',');
        FixedDecimal.append(text, 1000 * z, PLACES);
        return text.toString();
    }
}

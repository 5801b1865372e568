package org.garboard.acoustics.laminate;

/**
 * What skins are commonly made of, to sound: typical values, from memory, the middle of their range unless
 * said otherwise. The laminate of one boat may differ; a measured value goes before any of these.
 */
public final class TypicalSolids {
    /** Mat and woven roving in polyester, 30 to 50 % glass: density 1500-1700, speeds 2500-2800 and 1400-1600, loss 3-8. */
    public static final Solid GLASS_POLYESTER = new Solid("glass laminate", 1600, 2650, 1500, 5);
    public static final Solid CAST_EPOXY = new Solid("cast epoxy", 1175, 2625, 1150, 4.5);
    public static final Solid ACRYLIC = new Solid("acrylic sheet", 1190, 2690, 1340, 1.2);
    public static final Solid STEEL = new Solid("steel", 7800, 5900, 3200, 0);
    public static final Solid ALUMINIUM = new Solid("aluminium", 2700, 6300, 3100, 0);
    /**
     * PVC foam of 80 kg/m3: speed 1000-1400. Shear speed and loss are our guess, because tables have none; of
     * the loss they say "very high".
     */
    public static final Solid PVC_FOAM = new Solid("PVC foam", 80, 1200, 600, 100);
    /**
     * End-grain balsa of 150 kg/m3 along the grain: speed 3500-4500. Shear speed and loss are our guess, as for
     * foam; the loss depends on moisture.
     */
    public static final Solid BALSA = new Solid("end-grain balsa", 150, 4000, 1500, 100);

    private TypicalSolids() {
    }
}

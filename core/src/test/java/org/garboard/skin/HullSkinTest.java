package org.garboard.skin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HullSkinTest {
    private static final Layup TWELVE = new Layup.Whole(0.012);

    @Test
    void exact_largestAndSmallestWithin300mmNeverAMean() {
        HullSkin skin = skin(SkinMaterial.SOLID_GLASS, null, reading(5, 0.4, 9), reading(5.2, 0.4, 12.5), reading(5, 0.7, 10),
            reading(5.301, 0.4, 30), reading(5, -0.4, 2));
        assertEquals(new ThicknessHere.Told(0.0125, 0.009, "3 readings within 300 mm"), skin.thicknessAt(5, 0.4));
    }

    @Test
    void exact_noReadingNearHereIsNotKnown() {
        HullSkin skin = skin(SkinMaterial.SOLID_GLASS, TWELVE, reading(5, 0.4, 12));
        assertEquals(new ThicknessHere.Told(0.012, 0.012, "a reading within 300 mm"), skin.thicknessAt(5.3, 0.4));
        assertEquals(new ThicknessHere.Untold("No gauge reading near here, the nearest is 301 mm away: take one within 300 mm."),
            skin.thicknessAt(5.301, 0.4));
        assertTrue(skin.thicknessAt(5, -0.4) instanceof ThicknessHere.Untold);
    }

    @Test
    void exact_withoutAGaugeTheLayupSpeaks() {
        assertEquals(new ThicknessHere.Told(0.012, 0.012, "the layup"), skin(SkinMaterial.SOLID_GLASS, TWELVE).thicknessAt(1, 0));
        assertTrue(skin(SkinMaterial.SOLID_GLASS, null).thicknessAt(1, 0) instanceof ThicknessHere.Untold);
    }

    @Test
    void exact_muchBelowTheLayupMeansACore() {
        HullSkin skin = skin(SkinMaterial.SOLID_GLASS, TWELVE, reading(5, 0.4, 12), reading(5.1, 0.4, 4));
        assertEquals(new ThicknessHere.CoreSuspected(0.004, 0.012), skin.thicknessAt(5, 0.4));
        assertTrue(skin(SkinMaterial.SOLID_GLASS, TWELVE, reading(5, 0.4, 7.3)).thicknessAt(5, 0.4) instanceof ThicknessHere.Told);
    }

    @Test
    void exact_aCoredSkinIsAsThickAsItsLayup() {
        Layup cored = new Layup.Sandwich(0.005, Layup.Core.BALSA, 0.020, 0.003);
        assertEquals(new ThicknessHere.Told(0.028, 0.005, "layup and gauge, which reads the outer skin alone"),
            skin(SkinMaterial.CORED_GLASS, cored, reading(5, 0.4, 5)).thicknessAt(5, 0.4));
        assertTrue(skin(SkinMaterial.CORED_GLASS, null, reading(5, 0.4, 5)).thicknessAt(5, 0.4) instanceof ThicknessHere.Untold);
    }

    @Test
    void refusesASolidSkinWithACore() {
        Layup cored = new Layup.Sandwich(0.005, Layup.Core.BALSA, 0.020, 0.003);
        assertThrows(IllegalArgumentException.class, () -> skin(SkinMaterial.SOLID_GLASS, cored));
        assertThrows(IllegalArgumentException.class, () -> skin(SkinMaterial.CORED_GLASS, TWELVE));
        assertThrows(IllegalArgumentException.class, () -> new GaugeReading(1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Layup.Whole(-0.001));
    }

    static GaugeReading reading(double x, double y, double mm) {
        return new GaugeReading(x, y, mm / 1000);
    }

    static HullSkin skin(SkinMaterial material, Layup layup, GaugeReading... readings) {
        return new HullSkin(material, Optional.ofNullable(layup), List.of(readings), Optional.empty(), List.of());
    }
}

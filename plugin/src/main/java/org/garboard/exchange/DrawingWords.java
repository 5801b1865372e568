package org.garboard.exchange;

import org.garboard.exchange.xml.job.DrawingUnits;
import org.garboard.exchange.xml.job.Orientation;
import org.garboard.exchange.xml.job.Paper;
import org.garboard.exchange.xml.job.Projection;
import org.garboard.job.DrawingWish;

/** The words of {@code garboard-job.xsd} for units, paper, how it lies and projection, and what they stand for. */
final class DrawingWords {

    private DrawingWords() {
    }

    static DrawingWish.Units units(DrawingUnits word) {
        return switch (word) {
            case MILLIMETRES -> DrawingWish.Units.MILLIMETRES;
            case FEET_INCHES_EIGHTHS -> DrawingWish.Units.FEET_INCHES_EIGHTHS;
        };
    }

    static DrawingWish.Paper paper(Paper word) {
        return DrawingWish.Paper.valueOf(word.value().replace('-', '_'));
    }

    /** What is not said is landscape. */
    static DrawingWish.Orientation orientation(Orientation word) {
        return word == Orientation.PORTRAIT ? DrawingWish.Orientation.PORTRAIT : DrawingWish.Orientation.LANDSCAPE;
    }

    static DrawingWish.Projection projection(Projection word) {
        return switch (word) {
            case FIRST_ANGLE -> DrawingWish.Projection.FIRST_ANGLE;
            case THIRD_ANGLE -> DrawingWish.Projection.THIRD_ANGLE;
        };
    }

    static String word(DrawingWish.Units units) {
        return switch (units) {
            case MILLIMETRES -> DrawingUnits.MILLIMETRES.value();
            case FEET_INCHES_EIGHTHS -> DrawingUnits.FEET_INCHES_EIGHTHS.value();
        };
    }

    static String word(DrawingWish.Paper paper) {
        return paper.name().replace('_', '-');
    }

    static String word(DrawingWish.Orientation orientation) {
        return switch (orientation) {
            case LANDSCAPE -> Orientation.LANDSCAPE.value();
            case PORTRAIT -> Orientation.PORTRAIT.value();
        };
    }

    static String word(DrawingWish.Projection projection) {
        return switch (projection) {
            case FIRST_ANGLE -> Projection.FIRST_ANGLE.value();
            case THIRD_ANGLE -> Projection.THIRD_ANGLE.value();
        };
    }
}

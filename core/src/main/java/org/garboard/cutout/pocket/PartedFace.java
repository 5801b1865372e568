package org.garboard.cutout.pocket;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.garboard.solid.Draft.Looks;
import org.garboard.solid.Fill;
import org.garboard.solid.Height;
import org.garboard.solid.Loop;
import org.garboard.solid.Parting;
import org.garboard.solid.Weave;

/** A face over a plane figure that edges of the skin part into pieces. */
final class PartedFace {
    private final Parting parting;
    private final List<Fill> fills;

    /** @param step of its triangles [m] */
    PartedFace(Parting parting, double step) {
        this.parting = parting;
        this.fills = parting.pieces().stream().map(piece -> Fill.of(parting.loop(piece.loop()),
            piece.hole().isEmpty() ? List.of() : List.of(parting.loop(piece.hole())), step)).toList();
    }

    /** The numbers of a loop's points lifted to a surface. */
    static int[] lifted(Weave weave, Loop loop, Height height) {
        return IntStream.range(0, loop.size()).map(i -> weave.point(loop.u(i), loop.v(i), height.at(loop.u(i), loop.v(i)))).toArray();
    }

    void lay(Weave weave, Looks looks, int[] known, Height height) {
        lay(weave, looks, known, height, piece -> true);
    }

    /**
     * Lays the pieces that are wanted.
     *
     * @param known numbers of the points of the figure's loops, in turn
     * @param height of the others
     * @return numbers of all points of the parting; below 0 where no piece has one
     */
    int[] lay(Weave weave, Looks looks, int[] known, Height height, Predicate<Loop> wanted) {
        int[] numbers = Arrays.copyOf(known, parting.points());
        Arrays.fill(numbers, known.length, numbers.length, -1);
        for (int k = 0; k < fills.size(); k++) {
            Parting.Piece piece = parting.pieces().get(k);
            if (wanted.test(parting.loop(piece.loop()))) {
                int[] round = IntStream.concat(piece.loop().stream().mapToInt(i -> i), piece.hole().stream().mapToInt(i -> i)).map(i -> {
                    if (numbers[i] < 0) {
                        numbers[i] = weave.point(parting.u(i), parting.v(i), height.at(parting.u(i), parting.v(i)));
                    }
                    return numbers[i];
                }).toArray();
                weave.face(looks, fills.get(k), round, (u, v) -> weave.point(u, v, height.at(u, v)));
            }
        }
        return numbers;
    }
}

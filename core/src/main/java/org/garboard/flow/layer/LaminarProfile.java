package org.garboard.flow.layer;

/** Pohlhausen's parabola of the second degree, 2 y - y^2: near enough to Blasius where a layer is still laminar and thin. */
record LaminarProfile() implements Layer.Profile {

    @Override
    public double velocity(double height) {
        return height >= 1 ? 1 : height * (2 - height);
    }

    @Override
    public double height(double velocity) {
        return 1 - Math.sqrt(1 - velocity);
    }
}

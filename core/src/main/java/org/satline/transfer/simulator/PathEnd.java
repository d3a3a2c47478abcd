package org.satline.transfer.simulator;

/** Where a path ends, as it stands at this moment: a port, a cylinder, the pump or the open air. */
record PathEnd(OpenPaths.Edge edge, double pascals, boolean liquid, double kelvins) {
    String name() {
        return edge.other();
    }
}

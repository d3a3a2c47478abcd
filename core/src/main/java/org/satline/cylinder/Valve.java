package org.satline.cylinder;

import org.satline.explanation.Coded;

/** The valve of a cylinder, by what it reaches when the cylinder stands upright. */
public enum Valve implements Coded {
    /** The valve at the top. */
    VAPOUR,
    /** The valve of the dip tube. */
    LIQUID
}

package org.satline.equation;

/** Which pair parameters a mixture equation uses. */
public enum InteractionModel {
    /** Published pairs, with this project's adjusted pairs of the default model laid over them. */
    ADJUSTED_OVER_PUBLISHED,
    /** Published pairs and the default combining rule alone. */
    PUBLISHED_ONLY
}

package afterlength.craft.setup;

/** The upper edge of the bridge, asked for in one of three ways; it always passes through the two outer wood points. */
public sealed interface Crown permits RadiusCrown, TemplateCrown, EvenPlayCrown {}

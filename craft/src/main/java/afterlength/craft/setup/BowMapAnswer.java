package afterlength.craft.setup;

/** How each string can be played alone in many places, or why that cannot be said. */
public sealed interface BowMapAnswer permits BowMap, BowRefused {}

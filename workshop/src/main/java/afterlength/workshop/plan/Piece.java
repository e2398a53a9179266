package afterlength.workshop.plan;

import afterlength.workshop.work.Step;

/**
 * What the planner moves as one: hands without a break, with the wait that bars the instrument, or a wait alone. A step is one piece or
 * several, in order.
 *
 * @param part its number within the step, from 0
 * @param begun whether it has begun, so that it stays where it is
 */
record Piece(Step step, int part, boolean begun) {}

package afterlength.workshop.examination;

import afterlength.sight.card.Card;
import java.time.Instant;

/**
 * How long the two check lines of one printed card are by the steel rule.
 *
 * @param number that stands on the sheet
 */
public record CardPrint(long id, Card card, int number, double levelMm, double uprightMm, Instant writtenAt) {}

package afterlength.workshop.examination;

import afterlength.sight.card.Card;
import java.time.Instant;

/** How long the two check lines of a printed card are by the steel rule. */
public record CardPrint(long id, Card card, double levelMm, double uprightMm, Instant writtenAt) {}

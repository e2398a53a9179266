package afterlength.workshop.closing;

record LastChanceSummary(long visitId, LastChance list) {}

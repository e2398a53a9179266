package afterlength.workshop.examination;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.paper.PaperDocument;
import afterlength.workshop.paper.PaperPdf;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.RunningWords;
import java.util.stream.Collectors;

/** Gathers custody receipts, and sets them. They stand here and not with the receipt because they show pictures. */
public final class CustodyReceipts {
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final PhotographStore photographs;
    private final SmallPictures pictures;

    public CustodyReceipts(
            OwnerStore owners, InstrumentStore instruments, PhotographStore photographs, SmallPictures pictures) {
        this.owners = owners;
        this.instruments = instruments;
        this.photographs = photographs;
        this.pictures = pictures;
    }

    /** The receipt on the paper of the shop, dated by the day of receipt. */
    public byte[] pdf(Visit visit, Settings shop) {
        Instrument instrument = instruments.get(visit.instrumentId());
        CustodyReceipt receipt = new CustodyReceipt(
                shop, instrument, owners.get(instrument.ownerId()), visit, photographs.list(visit.id(), Moment.BEFORE));
        return PaperPdf.of(new PaperDocument(
                "Receipt",
                "en",
                shop.letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                RunningWords.english(instrument.name() + ", visit " + visit.number(), Days.words(visit.receivedOn())),
                Templates.text(receipt),
                receipt.pictures().stream().collect(Collectors.toMap(CustodyReceipt::nameOf, pictures::forPaper))));
    }
}

package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.PhotoMeasuring;
import afterlength.sight.measure.PhotoRequest;
import afterlength.sight.measure.Print;
import afterlength.sight.measure.Progress;
import afterlength.sight.picture.Picture;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.picture.PictureReader;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A rendered card: its greys come out in the order in which they were asked of the printer. */
class CardColoursTest {
    @Test
    void theGreysAreReadInTheirOrder() {
        PictureFile file = new PictureFile("rendered.jpg", RenderedPicture.JPEG);
        MeasuredPhoto photo = (MeasuredPhoto)
                PhotoMeasuring.of(file, PhotoRequest.of(Optional.empty(), Print.checked(100, 100)), Progress.SILENT);
        CardColours colours = CardColours.of(((Picture) PictureReader.read(file)).upright(), photo);
        List<Double> greys = colours.patches().stream()
                .filter(seen -> seen.patch().isGrey())
                .map(seen -> seen.reading().colour().lightness())
                .toList();
        assertThat(greys).hasSize(6).isSortedAccordingTo((one, other) -> Double.compare(other, one));
        assertThat(greys.get(0) - greys.get(5)).isGreaterThan(30);
        assertThat(colours.words())
                .isEqualTo(
                        "Colours read in this picture are of the class “uncalibrated photograph”: usually off by 4.8 in ΔE00."
                                + " The difference of two places in it is usually off by only 0.4.");
    }
}

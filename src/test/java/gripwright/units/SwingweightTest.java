package gripwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The notation of the letter scale: ten points a letter from A0 to G10, from memory and without a citable source. */
class SwingweightTest {

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"A0;0;A0.0", "D2;32;D2.0", "d 2.5;32.5;D2.5", "C8,75;28.75;C8.8", "F0;50;F0.0",
        "G10;70;G10.0", "C9.9;29.9;C9.9"})
    void readAndWritten(String text, double points, String written) {
        Swingweight read = Swingweight.parse(text).orElseThrow();
        assertThat(read.points()).isEqualTo(points);
        assertThat(read.text()).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "H2", "D", "D10", "D11", "2D", "D2x"})
    void whatIsNoSwingweightIsNotRead(String text) {
        assertThat(Swingweight.parse(text)).isEmpty();
    }

    @Test
    void roundingCarriesIntoTheNextLetterAndTheEndsAreSaid() {
        assertThat(new Swingweight(29.96).text()).isEqualTo("D0.0");
        assertThat(new Swingweight(29.96).text(2)).isEqualTo("C9.96");
        assertThat(new Swingweight(-3.1).text()).isEqualTo("A0 \u2212 3.1");
        assertThat(new Swingweight(71.5).text()).isEqualTo("G10 + 1.5");
        assertThat(new Swingweight(30).plus(-2.5)).isEqualTo(new Swingweight(27.5));
        assertThat(new Swingweight(30)).isGreaterThan(new Swingweight(29));
        assertThatThrownBy(() -> new Swingweight(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}

package simmerpoint.trial.spot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.input.InputFileException;

class SpotPhotoTest {
    private static final int SIZE = 600;
    private static final double SIGMA = 60;

    @TempDir
    Path folder;

    /** A Gaussian spot over an even ground, as a camera with the curve of sRGB would write it. */
    private Path photo(double exposure) throws IOException {
        BufferedImage image = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < SIZE; y++) {
            for (int x = 0; x < SIZE; x++) {
                double dx = x + 0.5 - SIZE / 2.0 - 30;
                double dy = y + 0.5 - SIZE / 2.0 + 15;
                double light = 0.05 + exposure * Math.exp(-(dx * dx + dy * dy) / (2 * SIGMA * SIGMA));
                double c = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
                int v = (int) Math.round(255 * Math.min(1, c));
                image.setRGB(x, y, v << 16 | v << 8 | v);
            }
        }
        Path file = folder.resolve("photo.png");
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    /** Gaussian: half of the light and half of the brightness at σ√(2 ln 2), the share q at σ√(−2 ln(1 − q)) (closed form). */
    @Test
    void aGaussianSpotHasItsRadii() throws Exception {
        SpotPhoto spot = SpotPhoto.read(photo(0.8), 1000);
        double sigma = SIGMA / 1000;
        assertEquals(sigma * Math.sqrt(2 * Math.log(2)), spot.profile().halfRadius(), 0.02 * sigma);
        assertEquals(sigma * Math.sqrt(2 * Math.log(2)), spot.profile().radius50(), 0.04 * sigma);
        // What is fainter than a fiftieth of the middle is cut off, a fiftieth of the light: nine tenths of the rest
        // are 0.882 of all.
        assertEquals(sigma * Math.sqrt(-2 * Math.log(1 - 0.882)), spot.profile().radius90(), 0.03 * sigma);
        assertEquals(0.030, spot.profile().x(), 0.001);
        assertEquals(-0.015, spot.profile().y(), 0.001);
        assertEquals(0, spot.saturated());
    }

    @Test
    void saturationIsNoticed() throws Exception {
        SpotPhoto spot = SpotPhoto.read(photo(3), 1000);
        assertTrue(spot.saturated() > 0.3, () -> "" + spot.saturated());
        assertTrue(spot.profile().halfRadius() > 1.3 * SIGMA / 1000 * Math.sqrt(2 * Math.log(2)));
    }

    @Test
    void tablesNameWidthsOrPhotographs() throws Exception {
        photo(0.8);
        Path widths = Files.writeString(
                folder.resolve("w.csv"), "# a card\nfrom_middle_cm,width_mm\n70,90\n60,80 # nearer\n");
        List<CardReading> read = CardTable.read(widths);
        assertEquals(0.6, read.get(0).distance(), 1e-12);
        assertEquals(0.09, read.get(1).width(), 1e-12);
        Path photos =
                Files.writeString(folder.resolve("p.csv"), "from_middle_in,photo,pixels_per_cm\n20,photo.png,10\n");
        CardReading photo = CardTable.read(photos).get(0);
        assertEquals(0.508, photo.distance(), 1e-12);
        assertEquals(2 * SIGMA / 1000 * Math.sqrt(2 * Math.log(2)), photo.width(), 0.003);
    }

    @Test
    void badTablesAreRefusedWithTheirLine() throws Exception {
        for (String[] bad : new String[][] {
            {"from_middle,width\n1,2\n", "line 1"},
            {"from_middle_cm,width_cm\n60,7,5\n", "line 2"},
            {"from_middle_cm,width_cm\n60,-7\n", "line 2"},
            {"from_middle_cm,width_cm\n", "no reading"},
            {"from_middle_cm,photo,pixels_per_cm\n60,none.png,40\n", "no such picture"},
            {"from_middle_cm,photo,pixels_per_cm\n60,c.csv,40\n", "no picture"}
        }) {
            Path file = Files.writeString(folder.resolve("c.csv"), bad[0]);
            InputFileException e = assertThrows(InputFileException.class, () -> CardTable.read(file));
            assertTrue(e.getMessage().contains(bad[1]), e.getMessage());
        }
    }
}

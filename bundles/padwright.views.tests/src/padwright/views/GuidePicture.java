package padwright.views;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

import padwright.drawing.scene.Group;
import padwright.drawing.scene.Scene;
import padwright.drawing.scene.Transform;
import padwright.drawing.svg.SvgWriter;

/** A picture of the guide, drawn in English and, in a folder of its own, in German. */
public final class GuidePicture {

	/** Seen from the folder of this bundle, which tests run in. */
	private static final Path PICTURES = Path.of("..", "padwright.guide", "guide", "pictures");
	private static final Path FRESH = Path.of("target", "fresh");

	private GuidePicture() {
	}

	/**
	 * Fails unless the picture is what is drawn today, and writes what is not.
	 *
	 * @param width of the picture on the page, mm
	 */
	public static void assertUpToDate(String name, double width, Supplier<Scene> drawn) throws IOException {
		boolean english = isUpToDate(Path.of(name + ".svg"), svg(width, Locale.ENGLISH, drawn));
		boolean german = isUpToDate(Path.of("de", name + ".svg"), svg(width, Locale.GERMAN, drawn));
		assertTrue(english && german, "look at " + name + ".svg under " + FRESH + ", and copy it over the picture of the guide");
	}

	private static boolean isUpToDate(Path file, String fresh) throws IOException {
		Path published = PICTURES.resolve(file);
		String shown = Files.exists(published) ? Files.readString(published) : "";
		if (!shown.equals(fresh)) {
			Files.createDirectories(FRESH.resolve(file).getParent());
			Files.writeString(FRESH.resolve(file), fresh);
		}
		return shown.equals(fresh);
	}

	private static String svg(double width, Locale language, Supplier<Scene> drawn) {
		Locale before = Locale.getDefault(Locale.Category.DISPLAY);
		Locale.setDefault(Locale.Category.DISPLAY, language);
		try {
			StringWriter svg = new StringWriter();
			SvgWriter.write(svg, enlarged(drawn.get(), width));
			return svg.toString();
		} finally {
			Locale.setDefault(Locale.Category.DISPLAY, before);
		}
	}

	private static Scene enlarged(Scene scene, double width) {
		double factor = width / scene.width();
		return new Scene(scene.title(), width, scene.height() * factor, List.of(new Group(Optional.empty(), Optional.empty(),
				Transform.scaling(factor, 0, 0), scene.elements())));
	}
}

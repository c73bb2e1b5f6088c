package padwright.drawing.clock;

import padwright.drawing.scene.Fill;
import padwright.drawing.scene.Hatch;
import padwright.drawing.scene.Ink;
import padwright.drawing.scene.SolidFill;
import padwright.drawing.scene.Stroke;
import padwright.engine.length.Length;

/** How film of a thickness is shaded: the thicker the darker, from wide lines to solid black. */
public enum FilmHatch {
	HALF("0.5", 1.3, false),
	ONE("1", 0.75, false),
	ONE_AND_A_HALF("1.5", 1, true),
	TWO("2", 0.65, true),
	THREE("3", 0.44, true),
	THICKER("", 0, false);

	private static final double LINE = 0.2;
	private static final double DIRECTION = 45;

	private final String upToThou;
	private final double spacing;
	private final boolean crossed;

	FilmHatch(String upToThou, double spacing, boolean crossed) {
		this.upToThou = upToThou;
		this.spacing = spacing;
		this.crossed = crossed;
	}

	/** The shading of film this thick. */
	public static FilmHatch of(Length thickness) {
		for (FilmHatch hatch : values()) {
			if (hatch == THICKER || !thickness.isLongerThan(Length.thou(hatch.upToThou))) {
				return hatch;
			}
		}
		throw new AssertionError("the last shading takes every thickness");
	}

	/** The thickest film that is shaded so; of {@link #THICKER} what all such film is thicker than. */
	public Length upTo() {
		return Length.thou(this == THICKER ? THREE.upToThou : upToThou);
	}

	/** The fill, with lines this many times as wide and as far apart as on a small clock. */
	public Fill fill(double scale) {
		return this == THICKER
				? new SolidFill(Ink.BLACK)
				: new Hatch(Stroke.of(Ink.BLACK, LINE * scale), spacing * scale, DIRECTION, crossed);
	}
}

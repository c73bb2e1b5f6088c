package padwright.views.hole;

/**
 * Where a section lies in its drawing, life-size in mm: the middle of the hole at 0, the top of the bore at 0, the cup above.
 * Made of the section as it was before anything was dragged, so that the drawing stays where it is under the mouse.
 */
record HoleFrame(double left, double top, double right, double bottom) {

	/** For a cup and a rod, whose thickness the language does not say (invented). */
	static final double METAL = 0.7;
	/** For the words beside it. */
	private static final double ASIDE = 25;
	private static final double ABOVE = 18.5;
	private static final double BELOW = 3;

	static HoleFrame of(HoleSection section) {
		double radius = section.mm(HoleSize.BORE) / 2;
		double cup = Math.max(section.mm(HoleSize.CUP), section.mm(HoleSize.HOLE)) / 2 + METAL;
		double arm = section.mm(HoleSize.ARM);
		double right = Math.max(radius, Math.max(cup + ASIDE, section.isFar() ? 0 : arm + 20));
		double left = Math.max(radius, Math.max(cup + ASIDE, section.isFar() ? arm + 20 : 0));
		return new HoleFrame(-left, top(section) - ABOVE, right, 2 * radius + BELOW);
	}

	/** The highest that the cup reaches when it is open. */
	static double top(HoleSection section) {
		double shut = -section.mm(HoleSize.CHIMNEY);
		return section.hasCup() ? shut - section.mm(HoleSize.DEPTH) - METAL - lift(section) : shut;
	}

	/** How far the side of the cup that is away from the rod is lifted, at most. */
	private static double lift(HoleSection section) {
		double arm = section.mm(HoleSize.ARM);
		return section.mm(HoleSize.RISE) * (1 + section.mm(HoleSize.CUP) / 2 / Math.max(arm, 1));
	}

	double width() {
		return right - left;
	}

	double height() {
		return bottom - top;
	}
}

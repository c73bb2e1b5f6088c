package padwright.paper.page;

import java.util.List;

import padwright.drawing.scene.Element;

/** A part of a page over its whole width, drawn from its own upper left corner. */
public interface Part {

	/** As high as it must be, mm. */
	double height();

	/** Whether it may be made higher to fill a page. */
	boolean stretches();

	/** The part {@code height} mm high. */
	List<Element> draw(double height);
}

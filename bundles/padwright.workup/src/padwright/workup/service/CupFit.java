package padwright.workup.service;

import java.util.Optional;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.model.Lengths;
import padwright.model.stock.Assortment;
import padwright.model.stock.StockedSize;

/** Which stocked diameter goes into a cup. */
public final class CupFit {

	/** How much smaller than the cup a pad or disc may be (an assumption of ours; no source). */
	public static final Length SLACK = Length.millimetres("0.5");

	private CupFit() {
	}

	/** The widest diameter that enters a cup of {@code cup} without more slack than {@link #SLACK}. */
	public static Optional<StockedSize> diameter(Assortment diameters, Length cup) {
		LengthUnit unit = Lengths.unit(diameters.getUnit(), diameters);
		StockedSize widest = null;
		for (StockedSize size : diameters.getSizes()) {
			if (enters(size, unit, cup) && (widest == null || size.getSize().compareTo(widest.getSize()) > 0)) {
				widest = size;
			}
		}
		return Optional.ofNullable(widest);
	}

	private static boolean enters(StockedSize size, LengthUnit unit, Length cup) {
		return Lengths.exact(size.getSize(), unit).map(cup::minus)
				.filter(slack -> slack.signum() >= 0 && !slack.isLongerThan(SLACK)).isPresent();
	}
}

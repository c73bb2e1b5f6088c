package padwright.workup.checks.stock;

import padwright.engine.length.Length;
import padwright.model.Lengths;
import padwright.model.stock.Pad;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.Advice;
import padwright.workup.checks.Check;
import padwright.workup.checks.Findings;
import padwright.workup.checks.IssueCodes;
import padwright.workup.checks.Place;

/** The layers of a pad fit into it. */
public final class PadLayersCheck extends Check<Pad> {

	public PadLayersCheck() {
		super(Pad.class);
	}

	@Override
	protected void check(Pad pad, Findings findings) {
		Length layers = pad.getLayers().stream()
				.flatMap(layer -> Lengths.of(layer.getThickness(), layer).stream()).reduce(Length.ZERO, Length::plus);
		Length tolerance = Lengths.of(pad.getTolerance(), pad).orElse(Length.ZERO);
		Lengths.of(pad.getThickness(), pad).filter(whole -> layers.isLongerThan(whole.plus(tolerance)))
				.ifPresent(whole -> findings.warning(IssueCodes.LAYERS_THICKER_THAN_PAD,
						Place.of(pad, StockPackage.Literals.PAD__THICKNESS),
						Advice.of(IssueCodes.LAYERS_THICKER_THAN_PAD, pad.getName(), layers, whole)));
	}
}

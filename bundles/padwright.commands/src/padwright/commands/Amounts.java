package padwright.commands;

import padwright.engine.length.Length;
import padwright.workup.report.Figures;

/** Amounts as tables show them. */
final class Amounts {

	private Amounts() {
	}

	/** In millimetres to {@code decimals} places, without the unit. */
	static String millimetres(Length length, int decimals) {
		return Figures.millimetres(length, decimals);
	}

	/** To {@code decimals} places. */
	static String number(double number, int decimals) {
		return Figures.number(number, decimals);
	}

	/** A share of one in whole percent. */
	static String percent(double share) {
		return Figures.percent(share);
	}
}

package padwright.language.start;

/** The text of a stock list to begin with. */
public final class StockText {

	private StockText() {
	}

	/**
	 * Film, feelers, a pad and glue of common kinds. Thicknesses of film and skin are common practice, no source; all
	 * other figures are invented, and the text says so.
	 *
	 * @param name must be a name without fault
	 * @throws IllegalArgumentException if it has one
	 */
	public static String starter(String name) {
		return """
				// A list to begin with. Film from 0.5 to 7.5 thou and a skin of 1 thou are common practice; the other
				// figures are invented. Put in what is in your drawers, measured at your bench.

				stock %s {
					bench 20 °C 45 %%RH

					material polyester { source "no source found: calibrate at your bench" }
					material felt "wool felt" { animal source "no source found: calibrate at your bench" }
					material card { source "no source found: calibrate at your bench" }
					material bladder "bladder skin" { animal source "no source found: calibrate at your bench" }

					kind felt "felt pad" { stiffness 0.003 }

					pad Felt "woven felt pad" {
						kind felt
						base card 20 thou
						face felt 100 thou
						skin bladder 1 thou
						thick 121 thou +- 3 thou
						sinks 5 thou
					}

					backing Disc20 "20 thou disc" polyester 20 thou

					film Clear "polyester film" polyester { 0.5 1 1.5 2 3 4 5 7.5 thou }

					feeler HalfTape "half-thou tape" polyester 0.5 thou
					feeler Leaf1 1 thou
					feeler Leaf15 1.5 thou
					feeler Leaf2 2 thou
					feeler Leaf3 3 thou
					feeler Leaf4 4 thou

					adhesive Shellac { }
				}
				""".formatted(NameFault.require(name));
	}
}

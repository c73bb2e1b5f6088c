package padwright.paper.sheet;

import padwright.engine.length.Length;

/** Diameter of a bore at a place, from the upper end of its joint. */
public record SheetBore(Length position, Length diameter) {
}

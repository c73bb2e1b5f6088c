package padwright.commands;

import java.util.List;
import java.util.stream.Stream;

import padwright.language.shop.ShopFinding;

/**
 * What a check found.
 *
 * @param files how many it was asked for
 * @param findings in these
 * @param others how many files were checked beside them, since they may use them
 * @param broken what is wrong in these others only since the files asked for changed
 */
record CheckOutcome(int files, List<ShopFinding> findings, int others, List<ShopFinding> broken) {

	List<ShopFinding> all() {
		return Stream.concat(findings.stream(), broken.stream()).toList();
	}
}

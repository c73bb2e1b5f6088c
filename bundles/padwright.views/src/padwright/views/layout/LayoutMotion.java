package padwright.views.layout;

import java.util.Set;

/**
 * What moves while fingers press.
 *
 * @param pressed ids of touches
 * @param moved ids of keys away from their rest
 * @param shut ids of keys whose pad is down, and of holes that are covered
 * @param isShown whether anything is pressed at all, or it is looked at
 */
public record LayoutMotion(Set<String> pressed, Set<String> moved, Set<String> shut, boolean isShown) {

	/** Where no fingers are looked at. */
	public static final LayoutMotion REST = new LayoutMotion(Set.of(), Set.of(), Set.of(), false);
}

package padwright.language.ide.fixes;

import java.util.List;

/** Knows the fixes for findings of one kind. */
@FunctionalInterface
interface FixProvider {

	/** None where the finding at hand has no cure that text could bring. */
	List<Fix> fixes(Site site);
}

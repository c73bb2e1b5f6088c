package padwright.workbench.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

class SearchFieldTest {

	@Test
	void actionsOfThePlatformAreNotOfferedForSearch() {
		PlatformUI.getWorkbench().getDisplay().syncExec(() -> assertTrue(SearchField
				.in(PlatformUI.getWorkbench().getWorkbenchWindows()[0]).noneMatch(field -> field.isToBeRendered())));
	}
}

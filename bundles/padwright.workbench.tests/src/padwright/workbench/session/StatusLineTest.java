package padwright.workbench.session;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;

import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.jupiter.api.io.TempDir;

import padwright.workbench.Driver;

class StatusLineTest {

	private static final String TOLD = "told once";

	@TempDir
	private Path folder;
	private Driver driver;

	@BeforeEach
	void openShop() throws Exception {
		driver = Driver.withExampleShop(folder);
		driver.open("plans/first.plan");
	}

	@AfterEach
	void closeShop() throws Exception {
		driver.close();
	}

	@ParameterizedTest
	@ValueSource(booleans = {false, true})
	void whatIsToldGoesAfterAWhile(boolean error) throws Exception {
		StatusLine.tell(TOLD, error, 500);
		Driver.waitFor("what is told", StatusLineTest::isSeen);
		Driver.waitFor("its end", () -> !isSeen());
	}

	private static boolean isSeen() {
		return Arrays.stream(Driver.display().getShells()).flatMap(StatusLineTest::within).anyMatch(control ->
				control instanceof CLabel line && TOLD.equals(line.getText())
						|| control instanceof Label label && TOLD.equals(label.getText()));
	}

	private static Stream<Control> within(Composite composite) {
		return Arrays.stream(composite.getChildren()).flatMap(child -> Stream.concat(Stream.of(child),
				child instanceof Composite inner ? within(inner) : Stream.empty()));
	}
}

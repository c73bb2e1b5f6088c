package padwright.workbench.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines of an indicator at a terminal that the system makes up; no screen is needed. */
class SerialLinesTest {

	private static final int BAUD = 9600;
	private static final int PATIENCE = 30;

	@TempDir
	private Path folder;
	private final BlockingQueue<String> told = new LinkedBlockingQueue<>();
	private final SerialLines.Listener listener = new SerialLines.Listener() {

		@Override
		public void line(String line) {
			told.add(line);
		}

		@Override
		public void open(boolean open) {
			told.add(open ? "open" : "gone");
		}
	};

	private void assertTold(String next) throws InterruptedException {
		assertEquals(next, told.poll(PATIENCE, TimeUnit.SECONDS));
	}

	@Test
	void linesAreToldWholeHoweverTheyEndAndCome() throws Exception {
		Path port = folder.resolve("port");
		try (PseudoTerminal indicator = new PseudoTerminal(port);
				SerialLines lines = SerialLines.read(port.toString(), BAUD, listener)) {
			assertTold("open");
			indicator.send("0.0135\r\n+0.34 mm\r\r\n12");
			assertTold("0.0135");
			assertTold("+0.34 mm");
			indicator.send(".7\n");
			assertTold("12.7");
		}
	}

	@Test
	void unpluggedAndPluggedInAgainItGoesOn() throws Exception {
		Path port = folder.resolve("port");
		try (SerialLines lines = SerialLines.read(port.toString(), BAUD, listener)) {
			assertTold("gone");
			try (PseudoTerminal indicator = new PseudoTerminal(port)) {
				assertTold("open");
				indicator.send("1.5\n0.");
				assertTold("1.5");
			}
			assertTold("gone");
			try (PseudoTerminal indicator = new PseudoTerminal(port)) {
				assertTold("open");
				indicator.send("2\n");
				assertTold("2");
			}
		}
	}
}

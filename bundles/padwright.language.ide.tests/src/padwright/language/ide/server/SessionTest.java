package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionTest {

	@TempDir
	private Path folder;

	@Test
	void goodbyeInOrderEndsTheServer() throws Exception {
		Connection connection = Connection.open(TestShop.example(folder).folder());
		assertEquals("Padwright", connection.initialized().getServerInfo().getName());
		assertTrue(connection.sayGoodbye());
	}

	@Test
	void closedPipeEndsTheServer() throws Exception {
		Connection connection = Connection.open(TestShop.example(folder).folder());
		assertFalse(connection.hangUp());
	}
}

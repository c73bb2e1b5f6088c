package padwright.language.ide.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;

/** Whatever a client sends, the server ends with it, and reserves no memory for what is only announced. */
class MessageStreamTest {

	private static final int CLIENTS = 25;

	@Test
	void aServerEndsWithAnyStream() throws Exception {
		for (int client = 0; client < CLIENTS; client++) {
			byte[] stream = new RandomMessages(client).stream();
			CompletableFuture<Boolean> served = CompletableFuture.supplyAsync(
					() -> StdioServer.serve(new ByteArrayInputStream(stream), new ByteArrayOutputStream()));
			assertNotNull(served.get(Connection.PATIENCE_SECONDS, TimeUnit.SECONDS), "client " + client);
		}
	}

	private static String passed(String stream) throws IOException {
		try (InputStream bounded = new BoundedMessages(
				new ByteArrayInputStream(stream.getBytes(StandardCharsets.UTF_8)))) {
			return new String(bounded.readAllBytes(), StandardCharsets.UTF_8);
		}
	}

	private static String message(String body) {
		return "Content-Length: " + body.getBytes(StandardCharsets.UTF_8).length + "\r\n\r\n" + body;
	}

	@Test
	void usualMessagesPass() throws IOException {
		String stream = message("{\"a\":\"für\"}") + "Content-Type: x\r\n" + message("content-length: 999999999999\n");
		assertEquals(stream, passed(stream));
	}

	@Test
	void aMessageTooLongForAnyoneEndsTheStream() throws IOException {
		String before = message("{}");
		for (String length : new String[] { "67108865", "2147483647", "99999999999999999999999" }) {
			String header = "Content-Length: " + length + "\r\n";
			assertEquals(before + header.strip() + "\r", passed(before + header + "\r\n{}"), length);
		}
	}

	@Test
	void aHeaderWithoutEndEndsTheStream() throws IOException {
		assertEquals(8192, passed("x".repeat(100_000)).length());
		assertEquals(8192, passed("x: y\r\n".repeat(100_000)).length());
	}
}

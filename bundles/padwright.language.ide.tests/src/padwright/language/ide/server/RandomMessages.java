package padwright.language.ide.server;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Random;

/** What a client out of its mind could send: messages of the protocol, spoilt in all ways. */
final class RandomMessages {

	private static final int MESSAGES = 40;
	private static final String DOCUMENT = "\"textDocument\":{\"uri\":\"file:///nowhere/a.plan\",\"version\":1}";
	private static final String PLACE = ",\"position\":{\"line\":%d,\"character\":%d}";
	private static final String[] METHODS = { "textDocument/hover", "textDocument/completion", "textDocument/definition",
			"textDocument/references", "textDocument/rename", "textDocument/formatting", "textDocument/rangeFormatting",
			"textDocument/onTypeFormatting", "textDocument/codeAction", "textDocument/codeLens",
			"textDocument/documentSymbol", "textDocument/foldingRange", "textDocument/inlayHint",
			"textDocument/semanticTokens/full", "textDocument/prepareRename", "workspace/symbol",
			"workspace/executeCommand", "textDocument/didChange", "textDocument/didClose", "textDocument/didSave",
			"workspace/didChangeWatchedFiles", "workspace/didChangeConfiguration", "initialized", "initialize",
			"shutdown", "no/such", "$/cancelRequest", "$/setTrace" };
	private static final String OPEN = "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didOpen\","
			+ "\"params\":{\"textDocument\":{\"uri\":\"file:///nowhere/a.plan\",\"languageId\":\"x\","
			+ "\"version\":1,\"text\":\"plan P for S {\\n\\tkey A\\n}\"}}}";

	private final Random random;
	private final ByteArrayOutputStream stream = new ByteArrayOutputStream();

	RandomMessages(long seed) {
		random = new Random(seed);
	}

	/** All that the client sends; the same for the same seed. */
	byte[] stream() {
		send("{\"jsonrpc\":\"2.0\",\"id\":0,\"method\":\"initialize\",\"params\":{\"capabilities\":{}}}");
		send("{\"jsonrpc\":\"2.0\",\"method\":\"initialized\",\"params\":{}}");
		send(OPEN);
		for (int message = 1; message <= MESSAGES; message++) {
			send(random.nextInt(6) == 0 ? spoilt(message(message)) : message(message));
		}
		return stream.toByteArray();
	}

	private void send(String body) {
		byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
		int length = random.nextInt(30) == 0 ? random.nextInt(2 * bytes.length + 1) : bytes.length;
		write(random.nextInt(40) == 0 ? "Content-Length: 2147483647\r\n\r\n" : "Content-Length: " + length + "\r\n\r\n");
		stream.writeBytes(bytes);
	}

	private void write(String text) {
		stream.writeBytes(text.getBytes(StandardCharsets.UTF_8));
	}

	private String message(int id) {
		String method = METHODS[random.nextInt(METHODS.length)];
		String params = "{" + DOCUMENT + PLACE.formatted(number(), number()) + ",\"range\":{\"start\":{\"line\":" + number()
				+ ",\"character\":" + number() + "},\"end\":{\"line\":" + number() + ",\"character\":" + number()
				+ "}},\"ch\":\"}\",\"newName\":\"" + (random.nextBoolean() ? "B" : "1 {") + "\",\"context\":{\"diagnostics\":[]}"
				+ ",\"contentChanges\":[{\"text\":\"" + (random.nextBoolean() ? "x" : "") + "\",\"range\":{\"start\":{\"line\":"
				+ number() + ",\"character\":" + number() + "},\"end\":{\"line\":" + number() + ",\"character\":" + number()
				+ "}}}],\"command\":\"padwright.none\",\"query\":\"\",\"changes\":[]}";
		return "{\"jsonrpc\":\"2.0\"," + (random.nextBoolean() ? "\"id\":" + id + "," : "") + "\"method\":\"" + method
				+ "\",\"params\":" + (random.nextInt(6) == 0 ? "null" : params) + "}";
	}

	private int number() {
		int[] some = { 0, 0, 1, 1, 2, 5, -1, 1000, Integer.MAX_VALUE };
		return some[random.nextInt(some.length)];
	}

	private String spoilt(String message) {
		StringBuilder spoilt = new StringBuilder(message);
		for (int hits = 1 + random.nextInt(5); hits > 0; hits--) {
			spoilt.setCharAt(random.nextInt(spoilt.length()), (char) (32 + random.nextInt(95)));
		}
		return random.nextBoolean() ? spoilt.toString() : spoilt.substring(0, random.nextInt(spoilt.length()));
	}
}

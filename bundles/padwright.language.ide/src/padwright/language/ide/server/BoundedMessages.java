package padwright.language.ide.server;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;

/**
 * A client's stream, ended where a message is announced as longer than any real one: who reads messages reserves the
 * memory for one before it comes. Headers without an end are bounded too.
 */
final class BoundedMessages extends FilterInputStream {

	/** Far more than an editor sends at once for the largest document. */
	static final long LONGEST_MESSAGE = 64L << 20;
	private static final int LONGEST_HEADER = 8192;
	private static final String LENGTH = "content-length:";

	private final StringBuilder line = new StringBuilder();
	private int header;
	private long announced;
	private long body;
	private boolean ended;

	BoundedMessages(InputStream messages) {
		super(messages);
	}

	@Override
	public int read() throws IOException {
		int next = ended ? -1 : super.read();
		if (next >= 0) {
			see((byte) next);
		}
		return ended ? -1 : next;
	}

	@Override
	public int read(byte[] into, int offset, int length) throws IOException {
		if (ended || length == 0) {
			return ended ? -1 : 0;
		}
		if (body > 0) {
			int count = super.read(into, offset, (int) Math.min(length, body));
			body -= Math.max(0, count);
			return count;
		}
		int next = read();
		if (next < 0) {
			return -1;
		}
		into[offset] = (byte) next;
		return 1;
	}

	private void see(byte next) {
		if (body > 0) {
			body--;
			return;
		}
		header++;
		if (next == '\n') {
			endLine(line.toString().strip().toLowerCase(Locale.ROOT));
			line.setLength(0);
		} else {
			line.append((char) next);
		}
		ended |= header > LONGEST_HEADER;
	}

	private void endLine(String text) {
		if (text.startsWith(LENGTH)) {
			announced = length(text.substring(LENGTH.length()).strip());
			ended |= announced > LONGEST_MESSAGE;
		} else if (text.isEmpty()) {
			body = announced;
			announced = 0;
			header = 0;
		}
	}

	private static long length(String digits) {
		return digits.matches("[0-9]{1,18}") ? Long.parseLong(digits) : digits.matches("[0-9]+") ? Long.MAX_VALUE : 0;
	}
}

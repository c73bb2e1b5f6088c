package padwright.paper.pdf;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Passes everything on but the closing: the stream belongs to the caller. */
final class UnclosedStream extends FilterOutputStream {

	UnclosedStream(OutputStream out) {
		super(out);
	}

	@Override
	public void write(byte[] bytes, int offset, int length) throws IOException {
		out.write(bytes, offset, length);
	}

	@Override
	public void close() throws IOException {
		flush();
	}
}

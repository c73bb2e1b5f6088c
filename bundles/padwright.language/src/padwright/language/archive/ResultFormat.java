package padwright.language.archive;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import padwright.language.shop.ShopFinding;
import padwright.workup.checks.Severity;

/** How results are written to disk and read again. */
final class ResultFormat {

	/** Longer texts and lists are signs of a spoilt file. */
	private static final int LONGEST = 1 << 20;

	private interface Reading<T> {
		T read(DataInputStream in) throws IOException;
	}

	private interface Writing<T> {
		void write(DataOutputStream out, T value) throws IOException;
	}

	/** Thousands of files share few names and fingerprints. */
	private final Map<String, String> shared = new HashMap<>();

	StoredResult read(DataInputStream in) throws IOException {
		FileStamp stamp = FileStamp.read(in);
		return new StoredResult(stamp, readText(in), in.readBoolean(), readShared(in),
				new FileResult(readList(in, this::readFinding),
						readList(in, from -> new PlanName(readText(from), from.readInt(), from.readInt())),
						readList(in, ResultFormat::readText), readList(in, this::readShared), in.readBoolean()));
	}

	static void write(DataOutputStream out, StoredResult stored) throws IOException {
		stored.stamp().write(out);
		writeText(out, stored.hash());
		out.writeBoolean(stored.source());
		writeText(out, stored.basis());
		writeList(out, stored.result().findings(), ResultFormat::writeFinding);
		writeList(out, stored.result().plans(), ResultFormat::writePlan);
		writeList(out, stored.result().names(), ResultFormat::writeText);
		writeList(out, stored.result().uses(), ResultFormat::writeText);
		out.writeBoolean(stored.result().asksForNames());
	}

	private ShopFinding readFinding(DataInputStream in) throws IOException {
		return new ShopFinding(Path.of(readShared(in)), in.readInt(), in.readInt(),
				Severity.values()[in.readByte()], readShared(in), readText(in));
	}

	private static void writeFinding(DataOutputStream out, ShopFinding finding) throws IOException {
		writeText(out, finding.file().toString());
		out.writeInt(finding.line());
		out.writeInt(finding.column());
		out.writeByte(finding.severity().ordinal());
		writeText(out, finding.code());
		writeText(out, finding.message());
	}

	private static void writePlan(DataOutputStream out, PlanName plan) throws IOException {
		writeText(out, plan.name());
		out.writeInt(plan.line());
		out.writeInt(plan.column());
	}

	private String readShared(DataInputStream in) throws IOException {
		return shared.computeIfAbsent(readText(in), text -> text);
	}

	static String readText(DataInputStream in) throws IOException {
		byte[] bytes = new byte[length(in)];
		in.readFully(bytes);
		return new String(bytes, StandardCharsets.UTF_8);
	}

	static void writeText(DataOutputStream out, String text) throws IOException {
		byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
		out.writeInt(bytes.length);
		out.write(bytes);
	}

	private static <T> List<T> readList(DataInputStream in, Reading<T> reading) throws IOException {
		List<T> list = new ArrayList<>();
		for (int left = length(in); left > 0; left--) {
			list.add(reading.read(in));
		}
		return list;
	}

	private static <T> void writeList(DataOutputStream out, List<T> list, Writing<T> writing) throws IOException {
		out.writeInt(list.size());
		for (T value : list) {
			writing.write(out, value);
		}
	}

	private static int length(DataInputStream in) throws IOException {
		int length = in.readInt();
		if (length < 0 || length > LONGEST) {
			throw new EOFException("spoilt");
		}
		return length;
	}
}

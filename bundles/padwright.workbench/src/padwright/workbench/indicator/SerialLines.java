package padwright.workbench.indicator;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;

/**
 * Lines that come over a serial port, read in a thread of their own. A port that is not there, or goes, is waited for; what
 * came before stays with whoever was told of it.
 */
public final class SerialLines implements AutoCloseable {

	/** Told in the thread that reads. */
	public interface Listener {

		/** A line has come, without its end; none is empty. */
		void line(String line);

		/** The port is open from now on, or is not. Told once at first, then whenever it changes. */
		void open(boolean open);
	}

	private static final int LOOK_MS = 200;
	private static final int RETRY_MS = 300;
	private static final int ROOM = 256;
	/** What is longer without an end is no line of an indicator. */
	private static final int LONGEST = 200;

	private final String name;
	private final int baud;
	private final Listener listener;
	private final Thread reading;
	private volatile boolean closed;
	private Optional<Boolean> told = Optional.empty();

	private SerialLines(String name, int baud, Listener listener) {
		this.name = name;
		this.baud = baud;
		this.listener = listener;
		reading = new Thread(this::run, "serial port " + name);
		reading.setDaemon(true);
	}

	/**
	 * Begins to read.
	 *
	 * @param name of the port, such as {@code COM3} or {@code /dev/ttyUSB0}
	 * @param baud bits a second, with eight bits to a character, no parity and one stop bit
	 */
	public static SerialLines read(String name, int baud, Listener listener) {
		SerialLines lines = new SerialLines(name, baud, listener);
		lines.reading.start();
		return lines;
	}

	/** The names of the ports that are there now. */
	public static List<String> ports() {
		return Arrays.stream(SerialPort.getCommPorts()).map(SerialPort::getSystemPortPath).sorted().toList();
	}

	private void run() {
		while (!closed) {
			Optional<SerialPort> port = open();
			tell(port.isPresent());
			port.ifPresent(this::read);
			pause();
		}
	}

	private Optional<SerialPort> open() {
		try {
			SerialPort port = SerialPort.getCommPort(name);
			port.setComPortParameters(baud, 8, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
			port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, LOOK_MS, 0);
			return port.openPort() ? Optional.of(port) : Optional.empty();
		} catch (SerialPortInvalidPortException absent) {
			return Optional.empty();
		}
	}

	/** Until it goes. A line whose end has not come then is left out: it may lack its last figures. */
	private void read(SerialPort port) {
		byte[] bytes = new byte[ROOM];
		StringBuilder line = new StringBuilder();
		int count = 0;
		while (count >= 0 && !closed) {
			count = port.readBytes(bytes, ROOM);
			if (count > 0) {
				take(new String(bytes, 0, count, StandardCharsets.ISO_8859_1), line);
			}
		}
		port.closePort();
	}

	private void take(String characters, StringBuilder line) {
		for (char character : characters.toCharArray()) {
			if (character == '\n' || character == '\r') {
				end(line);
			} else if (line.length() < LONGEST) {
				line.append(character);
			}
		}
	}

	private void end(StringBuilder line) {
		String whole = line.toString().strip();
		line.setLength(0);
		if (!whole.isEmpty() && !closed) {
			listener.line(whole);
		}
	}

	private void tell(boolean open) {
		if (!told.equals(Optional.of(open)) && !closed) {
			told = Optional.of(open);
			listener.open(open);
		}
	}

	private void pause() {
		try {
			Thread.sleep(RETRY_MS);
		} catch (InterruptedException ended) {
			closed = true;
		}
	}

	/** Lets the port go; nothing is told any more. */
	@Override
	public void close() {
		closed = true;
		reading.interrupt();
	}
}

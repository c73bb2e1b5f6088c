package padwright.benchmarks.scale;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

import com.sun.management.OperatingSystemMXBean;

/**
 * What a process took from its start to its end.
 *
 * @param cpu seconds of processor time of all its threads, those of Java itself too, so that what else runs on the
 *            machine hardly counts
 * @param wall seconds
 * @param peak most memory it ever held, in MiB; 0 where the system does not tell
 * @param detail a figure of its own
 */
record Cost(double cpu, double wall, long peak, double detail) {

	private static final String MARK = "cost ";
	private static final OperatingSystemMXBean PROCESS =
			(OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

	/** Of this process until now. */
	static Cost now(double detail) throws IOException {
		long wall = ManagementFactory.getRuntimeMXBean().getUptime();
		return new Cost(cpuSeconds(), wall / 1e3, peakMemory(), detail);
	}

	static double cpuSeconds() {
		return PROCESS.getProcessCpuTime() / 1e9;
	}

	private static long peakMemory() throws IOException {
		Path status = Path.of("/proc/self/status");
		return Files.exists(status) ? Files.readAllLines(status).stream().filter(line -> line.startsWith("VmHWM"))
				.mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) >> 10).findFirst().orElse(0) : 0;
	}

	/** The run that took least: what others did meanwhile can only have added to it. */
	static Cost least(List<Cost> runs) {
		return runs.stream().min(Comparator.comparingDouble(Cost::cpu)).orElseThrow();
	}

	void print() {
		System.out.println(MARK + cpu + " " + wall + " " + peak + " " + detail);
	}

	/** From what a process has printed. */
	static Cost parse(List<String> printed) {
		String[] words = printed.stream().filter(line -> line.startsWith(MARK)).findFirst()
				.orElseThrow(() -> new IllegalStateException("a run failed: " + printed)).split(" ");
		return new Cost(Double.parseDouble(words[1]), Double.parseDouble(words[2]), Long.parseLong(words[3]),
				Double.parseDouble(words[4]));
	}
}

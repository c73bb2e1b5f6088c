/** What is wrong in the diary of a job. */
package padwright.workup.checks.jobs;

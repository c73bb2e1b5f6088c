/**
 * What many services tell together: rates of rare events pooled over players, lives of which only a bracket is known, figures
 * of several groups drawn toward each other, and the scatter of a hand that felt the same twice. Each answer is an interval
 * by quadrature on a fixed grid, so that it is the same on every machine.
 */
package padwright.engine.learning;

package org.oldwood.craft.pruning;

import java.util.Random;
import org.oldwood.crop.Stems;
import org.oldwood.crop.Yield;

/** Times the cut list and the six-season outlook of many bushes; see docs/benchmarks.md. */
final class PruningBenchmark {
    private PruningBenchmark() {}

    public static void main(String[] args) {
        FormPruning form = Schools.form("blackcurrant", "stool");
        Outlook.Basis basis = new Outlook.Basis(form.school(), form, Yield.read(Schools.CROPS.get("blackcurrant")),
                form.newShoots().orElseThrow());
        run(10_000, form, basis);
        run(100_000, form, basis);
        run(1_000_000, form, basis);
    }

    private static void run(int bushes, FormPruning form, Outlook.Basis basis) {
        Random random = new Random(7);
        long start = System.nanoTime();
        long out = 0;
        double kg = 0;
        for (int i = 0; i < bushes; i++) {
            Bush bush = Bush
                    .of(Stems.ofOpen(random.nextInt(12), random.nextInt(8), random.nextInt(6), random.nextInt(10)));
            out += form.school().winter(bush).number();
            if (bushes <= 100_000) {
                Habit plan = Habit.plan(form.school(), form.school());
                kg += Outlook.of(bush, plan, basis, 6).winters().get(5).kg().orElseThrow().is();
            }
        }
        System.out.printf("%,d bushes: %.2f s, %d stems out, %.0f kg%n", bushes, (System.nanoTime() - start) / 1e9, out,
                kg);
    }
}

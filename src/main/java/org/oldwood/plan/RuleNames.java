package org.oldwood.plan;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.Advisor;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;
import org.oldwood.store.Nearest;

/**
 * Whether what rules name is there: crops, groups, forms, facts, amounts, warnings, other rules and what a title is
 * filled with. A rule that names something unknown would never speak, or say less than was meant.
 */
public final class RuleNames {

    private final Rules rules;
    private final Collection<String> crops;
    private final Set<String> groups = new TreeSet<>();
    private final Set<String> forms = new TreeSet<>();
    private final Advisor advisors;
    private final Cautions cautions;

    public RuleNames(Rules rules, Crops crops, Cautions cautions, Advisor advisors) {
        this.rules = rules;
        this.advisors = advisors;
        this.crops = crops.ids();
        this.cautions = cautions;
        for (String id : crops.ids()) {
            Crop crop = crops.get(id);
            groups.add(crop.group());
            forms.addAll(crop.forms());
        }
    }

    /** Checks a file of rules; what is not known becomes a problem. */
    public void check(Fields file) {
        for (Fields rule : file.objects("rules")) {
            rule.texts("crops").forEach(crop -> known(rule, "crops", "crop", crop, crops));
            rule.texts("groups").forEach(group -> known(rule, "groups", "group", group, groups));
            rule.texts("forms").forEach(form -> known(rule, "forms", "form", form, forms));
            rule.optionalText("amount")
                    .ifPresent(amount -> known(rule, "amount", "amount", amount, advisors.amountNames()));
            rule.objects("when").forEach(this::fact);
            List.of("opens", "closes", "noLaterThan").forEach(end -> rule.object(end).ifPresent(this::fact));
            rule.optionalText("title").stream().flatMap(title -> Titles.PLACEHOLDER.matcher(title).results())
                    .forEach(found -> known(rule, "title", "placeholder", found.group(1), Titles.NAMES));
            after(rule);
            rule.texts("cautions").forEach(caution -> known(rule, "cautions", "caution", caution,
                    cautions.all().stream().map(Cautions.Caution::id).toList()));
        }
    }

    /** Checks a file of warnings: crops, groups, countries and the kinds of work, a rule's or a bundled warning's. */
    public void checkCautions(Fields file) {
        Set<String> work = new TreeSet<>();
        rules.all().forEach(rule -> work.addAll(rule.work()));
        Cautions.read(Documents.bundled()).all().forEach(caution -> work.addAll(caution.tasks()));
        for (Fields caution : file.objects("cautions")) {
            caution.texts("crops").forEach(crop -> known(caution, "crops", "crop", crop, crops));
            caution.texts("groups").forEach(group -> known(caution, "groups", "group", group, groups));
            caution.texts("tasks").forEach(task -> known(caution, "tasks", "work", task, work));
            caution.texts("countries").stream().map(code -> code.replaceFirst("^-", ""))
                    .filter(code -> !cautions.countries().contains(code))
                    .forEach(code -> caution.wrong("countries", "unknown-country",
                            "names no country that is known: \"%s\"".formatted(code),
                            "Write its ISO 3166 code, GB for example; a minus before each means all but these."));
        }
    }

    /** Checks the kinds of rounds: each rule that they gather is there, and gathered once. */
    public void checkRounds(Fields file) {
        Set<String> gathered = new TreeSet<>();
        for (Fields job : file.objects("kinds").stream().flatMap(kind -> kind.objects("jobs").stream()).toList()) {
            for (String rule : job.texts("rules")) {
                known(job, "rules", "rule", rule, rules.ids());
                job.tellIf(!gathered.add(rule), "rules", "rule-in-two-rounds", rule);
            }
        }
    }

    private void after(Fields rule) {
        rule.texts("after").forEach(before -> known(rule, "after", "rule", before, rules.ids()));
        rule.optionalText("id").filter(this::comesBeforeItself)
                .ifPresent(id -> rule.tell("after", "ring-of-rules", id));
    }

    /** Whether the rules that it waits for wait, in the end, for it. */
    private boolean comesBeforeItself(String id) {
        Set<String> before = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(id));
        while (!open.isEmpty()) {
            for (String next : rules.find(open.pop()).map(Rule::after).orElse(List.of())) {
                if (before.add(next)) { open.push(next); }
            }
        }
        return before.contains(id);
    }

    private void fact(Fields asked) {
        asked.optionalText("fact").ifPresent(name -> known(asked, "fact", "fact", name, advisors.factNames()));
    }

    private static void known(Fields fields, String key, String what, String name, Collection<String> among) {
        if (!among.contains(name)) {
            fields.wrong(key, "unknown-" + what, "names no %s that is known: \"%s\"".formatted(what, name),
                    Nearest.hint(name, among));
        }
    }
}

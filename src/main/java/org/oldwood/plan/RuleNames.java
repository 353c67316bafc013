package org.oldwood.plan;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.Advisors;
import org.oldwood.store.Fields;
import org.oldwood.store.Nearest;

/**
 * Whether what rules name is there: crops, groups, forms, facts, amounts and warnings. A rule that names something
 * unknown would never speak, or say less than was meant.
 */
public final class RuleNames {
    private final Collection<String> crops;
    private final Set<String> groups = new TreeSet<>();
    private final Set<String> forms = new TreeSet<>();
    private final Advisors advisors;
    private final Cautions cautions;

    public RuleNames(Crops crops, Cautions cautions, Advisors advisors) {
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
            rule.object("opens").ifPresent(this::fact);
            rule.object("closes").ifPresent(this::fact);
            rule.texts("cautions").forEach(caution -> caution(rule, caution));
        }
    }

    private void fact(Fields asked) {
        Optional<String> fact = asked.optionalText("fact");
        fact.ifPresent(name -> known(asked, "fact", "fact", name, advisors.factNames()));
    }

    private void caution(Fields rule, String id) {
        if (cautions.find(id).isEmpty()) {
            rule.wrong(
                    "cautions",
                    "unknown-caution",
                    "names no warning that is known: \"" + id + "\"",
                    "The warnings are in cautions.json.");
        }
    }

    private static void known(Fields fields, String key, String what, String name, Collection<String> among) {
        if (!among.contains(name)) {
            fields.wrong(
                    key,
                    "unknown-" + what,
                    "names no " + what + " that is known: \"" + name + "\"",
                    Nearest.hint(name, among));
        }
    }
}

package org.oldwood.craft.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.oldwood.crop.Crops;
import org.oldwood.store.Documents;

/** The bundled ways of pruning, for tests. */
public final class Schools {
    static final Documents DOCUMENTS = Documents.bundled();
    static final Crops CROPS = new Crops(DOCUMENTS);

    private Schools() {}

    public static FormPruning form(String crop, String form) {
        return Pruning.read(CROPS.get(crop)).orElseThrow().form(form).orElseThrow();
    }

    static School school(String crop, String form, String id) { return form(crop, form).school(id).orElseThrow(); }

    public static RenewalSchool stool(String crop, String id) { return (RenewalSchool) school(crop, "stool", id); }

    /** Every way of every crop. */
    static List<School> all() {
        List<School> all = new ArrayList<>();
        for (String id : CROPS.ids()) {
            Pruning.read(CROPS.get(id)).orElseThrow().forms().values().forEach(form -> all.addAll(form.schools()));
        }
        return all;
    }

    /** Every way of renewal of every crop. */
    static List<RenewalSchool> renewals() {
        return all().stream().filter(RenewalSchool.class::isInstance).map(RenewalSchool.class::cast).toList();
    }

    /** Every form of every crop, by crop and form. */
    static Map<String, FormPruning> forms() {
        Map<String, FormPruning> all = new TreeMap<>();
        for (String id : CROPS.ids()) {
            Pruning.read(CROPS.get(id)).orElseThrow().forms().forEach((form, one) -> all.put(id + ", " + form, one));
        }
        return all;
    }

    /** Every way of every crop, by crop, form and name. */
    static Map<String, School> named() {
        Map<String, School> all = new TreeMap<>();
        for (String id : CROPS.ids()) {
            Pruning.read(CROPS.get(id)).orElseThrow().forms().forEach((form, one) -> one.schools()
                    .forEach(school -> all.put(id + ", " + form + ", " + school.id(), school)));
        }
        return all;
    }

    /** Sound stems of two years and more that come out: those that a limit of a season counts. */
    static int older(Cut cut) {
        return cut.taken().stream().filter(one -> one.age() >= 2 && one.why() != Why.SICK && one.why() != Why.WEAK)
                .mapToInt(Cut.Taken::number).sum();
    }
}

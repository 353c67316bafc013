package org.oldwood.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Who gets in, and what becomes of what is sent. On this machine's own address. */
class PageServerTest {
    private final List<String> noted = new ArrayList<>();
    private final HttpClient client = HttpClient.newHttpClient();
    private PageServer server;

    @BeforeEach
    void open() throws IOException {
        server = PageServer.open(InetAddress.getByName("127.0.0.1"), 0, new Desk() {
            @Override
            public Object view() { return Map.of("garden", "Slope"); }

            @Override
            public String stamp() { return "now " + noted.size(); }

            @Override
            public String sheet() { return "<!DOCTYPE html><title>sheet</title>"; }

            @Override
            public Reply note(String key, List<Map<String, String>> rows) {
                noted.add(key + rows);
                return new Reply(!key.equals("refused"), List.of("said"));
            }

            @Override
            public Reply takeBack(String entry, boolean whole) { return new Reply(true, List.of()); }
        });
    }

    @AfterEach
    void close() { server.close(); }

    private String token() { return server.link().substring(server.link().indexOf("#t=") + 3); }

    private HttpRequest.Builder to(String path) { return HttpRequest.newBuilder(URI.create(server.address() + path)); }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest.Builder post(String path, String body) {
        return to(path).header(Guard.TOKEN, token()).POST(HttpRequest.BodyPublishers.ofString(body));
    }

    @Test
    void the_page_holds_nothing_of_the_garden_and_no_inline_script() throws Exception {
        HttpResponse<String> page = send(to(""));

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).doesNotContain("Slope").contains("page.js").doesNotContain("<style")
                .doesNotContain("style=");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow()).contains("default-src 'none'",
                "script-src 'self'");
        assertThat(page.headers().allValues("Access-Control-Allow-Origin")).isEmpty();
        assertThat(send(to("page.js")).body().length() + send(to("page.css")).body().length() + page.body().length())
                .as("page, script and style together, under 60 KB").isLessThan(60_000);
    }

    @Test
    void the_garden_is_shown_with_the_token_alone() throws Exception {
        assertThat(send(to("garden")).statusCode()).isEqualTo(401);
        assertThat(send(to("garden").header(Guard.TOKEN, "wrong")).statusCode()).isEqualTo(401);
        assertThat(send(to("garden").header(Guard.TOKEN, token())).body()).isEqualTo("{\"garden\":\"Slope\"}");
    }

    @Test
    void what_the_phone_has_as_it_is_is_not_sent_again() throws Exception {
        HttpRequest.Builder look = to("garden").header(Guard.TOKEN, token());
        String stamp = send(look).headers().firstValue("ETag").orElseThrow();
        look.header("If-None-Match", stamp);

        assertThat(send(look).statusCode()).isEqualTo(304);
        send(post("notes", "{\"key\":\"k1\",\"rows\":[{\"entry\":\"picked\"}]}"));
        assertThat(send(look).statusCode()).isEqualTo(200);
    }

    /** A thousand; with {@code -DwrongRequests=10000} as many as that. */
    @Test
    void many_wrong_requests_change_nothing_and_do_not_keep_the_grower_out() throws Exception {
        int all = Integer.getInteger("wrongRequests", 1000);
        String row = "{\"key\":\"k\",\"rows\":[{\"entry\":\"picked\"}]}";
        int last = 0;
        for (int i = 0; i < all; i++) {
            HttpRequest.Builder wrong = switch (i % 5) {
                case 0 -> to("garden").header(Guard.TOKEN, "guess" + i);
                case 1 -> to("notes").POST(HttpRequest.BodyPublishers.ofString(row));
                case 2 -> to("notes").header(Guard.TOKEN, "x" + i).POST(HttpRequest.BodyPublishers.ofString(row));
                case 3 -> post("notes", row).header("Origin", "http://evil.example");
                default -> post("notes", row.substring(i % row.length() + 1));
            };
            int status = send(wrong).statusCode();
            assertThat(status).as("request %s", i).isBetween(400, 499);
            last = i % 5 == 0 ? status : last;
        }

        assertThat(last).isEqualTo(429);
        assertThat(noted).isEmpty();
        assertThat(send(to("garden").header(Guard.TOKEN, token())).statusCode()).isEqualTo(200);
    }

    @Test
    void a_foreign_name_or_a_foreign_page_is_refused() throws Exception {
        assertThat(raw("GET / HTTP/1.1\r\nHost: garden.example\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403");
        assertThat(send(to("garden").header(Guard.TOKEN, token()).header("Origin", "http://evil.example")).statusCode())
                .isEqualTo(403);
        assertThat(noted).isEmpty();
    }

    @Test
    void what_is_sent_reaches_the_desk_and_its_answer_comes_back() throws Exception {
        HttpResponse<String> good = send(
                post("notes", "{\"key\":\"k1\",\"rows\":[{\"entry\":\"picked\",\"kg\":\"1.2\"}]}"));
        HttpResponse<String> bad = send(post("notes", "{\"key\":\"refused\",\"rows\":[{\"entry\":\"picked\"}]}"));

        assertThat(good.statusCode()).isEqualTo(200);
        assertThat(bad.statusCode()).isEqualTo(422);
        assertThat(bad.body()).contains("said");
        assertThat(noted).containsExactly("k1[{entry=picked, kg=1.2}]", "refused[{entry=picked}]");
    }

    @Test
    void what_cannot_be_read_or_is_too_much_is_refused() throws Exception {
        assertThat(send(post("notes", "{")).statusCode()).isEqualTo(400);
        assertThat(send(post("notes", "[]")).statusCode()).isEqualTo(400);
        assertThat(send(post("notes", "{\"key\":\"k\",\"rows\":[]}")).statusCode()).isEqualTo(400);
        assertThat(send(post("notes", "{\"key\":\"k\",\"rows\":[\"" + "x".repeat(70_000) + "\"]}")).statusCode())
                .isEqualTo(413);
        assertThat(send(to("notes").header(Guard.TOKEN, token())).statusCode()).isEqualTo(405);
        assertThat(send(to("other").header(Guard.TOKEN, token())).statusCode()).isEqualTo(404);
        assertThat(noted).isEmpty();
    }

    @Test
    void a_ticket_opens_the_sheet_once() throws Exception {
        String at = send(post("sheet", "{}")).body().replaceAll(".*\"/(sheet/[^\"]+)\".*", "$1");

        assertThat(send(to(at)).body()).contains("<title>sheet</title>");
        assertThat(send(to(at)).statusCode()).isEqualTo(404);
    }

    private String raw(String request) throws IOException {
        URI at = URI.create(server.address());
        try (Socket socket = new Socket(at.getHost(), at.getPort())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}

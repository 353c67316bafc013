package org.oldwood.calendar.server;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;

/** Trust in one certificate that the person has, and in no other; the server's name is still checked. */
final class OwnCertificate {
    private OwnCertificate() {}

    /** @throws RecordException where the file holds no certificate (X.509, as PEM or DER) */
    static SSLContext trusted(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            Certificate certificate = CertificateFactory.getInstance("X.509").generateCertificate(in);
            KeyStore store = KeyStore.getInstance(KeyStore.getDefaultType());
            store.load(null, null);
            store.setCertificateEntry("own", certificate);
            TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            trust.init(store);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(null, trust.getTrustManagers(), null);
            return context;
        } catch (CertificateException e) {
            throw new RecordException(Problem.of("no-certificate", Place.of(file.toString())));
        } catch (GeneralSecurityException e) {
            throw new IOException("the runtime cannot trust a certificate of one's own", e);
        }
    }
}

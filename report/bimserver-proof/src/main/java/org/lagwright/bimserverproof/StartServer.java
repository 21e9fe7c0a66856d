package org.lagwright.bimserverproof;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javax.activation.DataHandler;
import javax.activation.FileDataSource;
import org.bimserver.BimServer;
import org.bimserver.BimServerConfig;
import org.bimserver.models.log.AccessMethod;
import org.bimserver.resources.ClasspathResourceFetcher;
import org.bimserver.servlets.RootServlet;
import org.bimserver.webservices.ServiceMap;
import org.bimserver.webservices.authorization.SystemAuthorization;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.servlet.ServletHolder;
import org.eclipse.jetty.webapp.WebAppContext;

/**
 * Starts a BIMserver with an empty database on a free port of 127.0.0.1 and ends when its standard
 * input does. Arguments: home folder, jar of ifcplugins, user and password of the administrator. It
 * says {@value #LISTENING} and the port when it is ready.
 */
public final class StartServer {

  /** Stands before the port on standard output. */
  public static final String LISTENING = "LISTENING ";

  private StartServer() {}

  /** See the class. */
  public static void main(String[] args) throws Exception {
    Path home = Path.of(args[0]);
    BimServerConfig config = new BimServerConfig();
    config.setHomeDir(home);
    config.setClassPath(System.getProperty("java.class.path"));
    config.setStartEmbeddedWebServer(false);
    config.setResourceFetcher(new ClasspathResourceFetcher());
    BimServer bimServer = new BimServer(config);
    bimServer.start();
    Server web = web(bimServer, home);
    web.start();
    int port = ((ServerConnector) web.getConnectors()[0]).getLocalPort();
    setUp(bimServer, Path.of(args[1]), "http://127.0.0.1:" + port, args[2], args[3]);
    System.out.println(LISTENING + port);
    System.out.flush();
    while (System.in.read() >= 0) {
      // waits for the end of the input
    }
    System.exit(0);
  }

  /** The web server that comes with BIMserver listens on all addresses; this one does not. */
  private static Server web(BimServer bimServer, Path home) throws IOException {
    Server web = new Server();
    ServerConnector connector = new ServerConnector(web);
    connector.setHost("127.0.0.1");
    connector.setPort(0);
    web.addConnector(connector);
    WebAppContext context =
        new WebAppContext(web, Files.createDirectories(home.resolve("www")).toString(), "/");
    context.setTempDirectory(home.resolve("web").toFile());
    context.addServlet(new ServletHolder(new RootServlet()), "/*");
    context.getServletContext().setAttribute("bimserver", bimServer);
    return web;
  }

  private static void setUp(
      BimServer bimServer, Path plugins, String address, String user, String password)
      throws Exception {
    ServiceMap services =
        bimServer
            .getServiceFactory()
            .get(new SystemAuthorization(1, TimeUnit.HOURS), AccessMethod.INTERNAL);
    services
        .getAdminInterface()
        .setup(address, "proof", "proof", "", "Administrator", user, password);
    services
        .getPluginInterface()
        .installPluginBundleFromFile(
            new DataHandler(new FileDataSource(plugins.toFile())), true, true);
    services.getSettingsInterface().setGenerateGeometryOnCheckin(false);
  }
}

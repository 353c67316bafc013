@echo off
rem Starts Oldwood. JAVA_HOME wins over the java on the PATH; OLDWOOD_OPTS is passed to the JVM.
setlocal
set "OLDWOOD_HOME=%~dp0.."
set "OLDWOOD_JAVA=java"
if defined JAVA_HOME set "OLDWOOD_JAVA=%JAVA_HOME%\bin\java"
"%OLDWOOD_JAVA%" -XX:SharedArchiveFile="%OLDWOOD_HOME%\lib\oldwood.jsa" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC -Xmn24m -XX:TieredStopAtLevel=1 %OLDWOOD_OPTS% -cp "%OLDWOOD_HOME%\lib\oldwood.jar" org.oldwood.cli.Main %*
exit /b %ERRORLEVEL%

@echo off
rem Starts Oldwood. JAVA_HOME wins over the java on the PATH; OLDWOOD_OPTS is passed to the JVM.
setlocal
set "OLDWOOD_HOME=%~dp0.."
set "OLDWOOD_JAVA=java"
if defined JAVA_HOME set "OLDWOOD_JAVA=%JAVA_HOME%\bin\java"
rem Two processors or fewer: a second thread that compiles would take the one that the program itself runs on.
set "OLDWOOD_COMPILERS="
if defined NUMBER_OF_PROCESSORS if %NUMBER_OF_PROCESSORS% LEQ 2 set "OLDWOOD_COMPILERS=-XX:CICompilerCount=1"
"%OLDWOOD_JAVA%" -XX:SharedArchiveFile="%OLDWOOD_HOME%\lib\oldwood.jsa" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC -Xmn24m -XX:TieredStopAtLevel=1 %OLDWOOD_COMPILERS% %OLDWOOD_OPTS% -cp "%OLDWOOD_HOME%\lib\oldwood.jar" org.oldwood.cli.Main %*
exit /b %ERRORLEVEL%

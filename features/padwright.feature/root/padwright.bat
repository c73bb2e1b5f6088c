@echo off
rem Runs Padwright's command line; the exit status is the command's.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
for %%L in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set "LAUNCHER=%%L"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Djava.awt.headless=true -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 %PADWRIGHT_JAVA_OPTIONS% -jar "%LAUNCHER%" -nosplash -application padwright.commands.padwright -data @none %*
exit /b %ERRORLEVEL%

@echo off
rem Runs Padwright's command line; the exit status is the command's. "padwright open" opens its workbench.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
rem Its own Java where it came with one.
if exist "%~dp0java\bin\java.exe" set "JAVA=%~dp0java\bin\java"
if exist "%JAVA%.exe" goto hasjava
if defined JAVA_HOME goto nojava
where /q java || goto nojava
:hasjava
if /i "%~1"=="open" (
	if not defined PADWRIGHT_WORKSPACE set "PADWRIGHT_WORKSPACE=%LOCALAPPDATA%\Padwright"
	goto open
)
set "CACHES=%~dp0configuration"
copy /y nul "%CACHES%\written" >nul 2>nul && del "%CACHES%\written" || set "CACHES=%LOCALAPPDATA%\Padwright\caches"
set "KEPT="
if exist "%CACHES%\commands.jsa" set KEPT="-XX:SharedArchiveFile=%CACHES%\commands.jsa"
set "PLACE=%~dp0."
"%JAVA%" -Xlog:disable %KEPT% -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -Djava.awt.headless=true -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 "-Dpadwright.home=%PLACE%" "-Dpadwright.classes=%CACHES%\commands.jsa" %PADWRIGHT_JAVA_OPTIONS% -cp "%~dp0commands.jar" padwright.commands.Main %*
exit /b %ERRORLEVEL%
:open
for %%L in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set "LAUNCHER=%%L"
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Djava.awt.headless=true -Dfile.encoding=UTF-8 "-Dpadwright.home=%~dp0." %PADWRIGHT_JAVA_OPTIONS% -jar "%LAUNCHER%" -nosplash -product padwright.workbench.product -application padwright.workbench.workbench -data "%PADWRIGHT_WORKSPACE%" %*
rem It ends with 23 where it wants to be started again, as after a change of its theme.
if %ERRORLEVEL% equ 23 goto open
exit /b %ERRORLEVEL%
:nojava
echo padwright: no Java found: install Java 17 or newer, or set JAVA_HOME>&2
exit /b 2

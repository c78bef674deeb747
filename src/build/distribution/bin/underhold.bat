@echo off
rem Starts Underhold: runs the command in the arguments, or the interactive shell where there are none.
rem Java 17 or later is taken from JAVA_HOME, else from the path.
setlocal
for %%I in ("%~dp0..") do set "UNDERHOLD_HOME=%%~fI"
set "UNDERHOLD_JAVA=java"
if defined JAVA_HOME set "UNDERHOLD_JAVA=%JAVA_HOME%\bin\java.exe"
set "UNDERHOLD_ROOM=400m"
if "%~1"=="report" set "UNDERHOLD_ROOM=800m"
set "UNDERHOLD_FLAGS=-Xms%UNDERHOLD_ROOM% -Xmn250m -XX:+UseSerialGC -XX:-UsePerfData -Xlog:disable"
if not "%~1"=="" if not "%~1"=="screen" if not "%~1 %~2"=="rules audit" set "UNDERHOLD_FLAGS=%UNDERHOLD_FLAGS% -XX:TieredStopAtLevel=1"
if not exist "%UNDERHOLD_HOME%\lib\underhold.jsa" goto plain
"%UNDERHOLD_JAVA%" %UNDERHOLD_FLAGS% "-XX:SharedArchiveFile=%UNDERHOLD_HOME%\lib\underhold.jsa" -jar "%UNDERHOLD_HOME%\lib\underhold.jar" %*
exit /b %ERRORLEVEL%
:plain
"%UNDERHOLD_JAVA%" %UNDERHOLD_FLAGS% -jar "%UNDERHOLD_HOME%\lib\underhold.jar" %*
exit /b %ERRORLEVEL%
